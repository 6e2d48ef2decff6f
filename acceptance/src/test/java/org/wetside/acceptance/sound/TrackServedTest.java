package org.wetside.acceptance.sound;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.ByteArrayOutputStream;
import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.acceptance.Browsing;
import org.wetside.app.sound.CueTrack;
import org.wetside.app.sound.Sampling;

/** The track as a player and a browser get it from a real server. */
class TrackServedTest {
  private static final double WITHIN_MS = 10;
  private static final Instant LATE = HandTime.BEGIN.plusSeconds(1030);

  private ServedRun run;

  @BeforeEach
  void open(@TempDir Path home) throws Exception {
    run = new ServedRun(home);
    run.press("started", "");
  }

  @AfterEach
  void close() {
    run.close();
  }

  @ParameterizedTest
  @ValueSource(strings = {"opus", "wav"})
  void itsPartsAreTheWhole(String ending) throws Exception {
    String path = ServedRun.track(ending, LATE);
    byte[] whole = run.get(path).body();
    ByteArrayOutputStream parts = new ByteArrayOutputStream();
    for (int at = 0; at < whole.length; ) {
      int last = Math.min(at + whole.length / 7, whole.length - 1);
      HttpResponse<byte[]> part = run.get(path, "Range", "bytes=" + at + "-" + last);
      assertThat(part.statusCode()).isEqualTo(206);
      assertThat(part.headers().firstValue("Content-Range"))
          .contains("bytes " + at + "-" + last + "/" + whole.length);
      parts.writeBytes(part.body());
      at = last + 1;
    }
    assertThat(parts.toByteArray()).isEqualTo(whole);
    byte[] end = run.get(path, "Range", "bytes=-5").body();
    assertThat(end).isEqualTo(java.util.Arrays.copyOfRange(whole, whole.length - 5, whole.length));
  }

  @Test
  void aPartThatIsNotThereIsRefusedAndAnOldMarkGetsTheWhole() throws Exception {
    String path = ServedRun.track("opus", LATE);
    HttpResponse<byte[]> whole = run.get(path);
    assertThat(run.get(path, "Range", "bytes=99999999-").statusCode()).isEqualTo(416);
    HttpResponse<byte[]> anew = run.get(path, "Range", "bytes=5-9", "If-Range", "\"old\"");
    assertThat(anew.statusCode()).isEqualTo(200);
    assertThat(anew.body()).isEqualTo(whole.body());
  }

  @Test
  void whatCannotBeGivenIsSaid() throws Exception {
    HttpResponse<byte[]> unreadable = run.get("/api/runs/1/track.opus?from=yesterday");
    assertThat(unreadable.statusCode()).isEqualTo(400);
    assertThat(text(unreadable)).contains("yesterday").contains("2026-05-04T19:31:07Z");
    HttpResponse<byte[]> over = run.get("/api/runs/1/track.wav?from=2027-01-01T00:00:00Z");
    assertThat(over.statusCode()).isEqualTo(422);
    assertThat(run.get("/api/runs/9/track.wav").statusCode()).isEqualTo(404);
    assertThat(run.get("/api/cues/track.opus").statusCode()).isEqualTo(400);
    assertThat(run.get("/api/runs/1/track.opus?tick=perhaps").statusCode()).isEqualTo(400);
  }

  @Test
  void aBrowserHearsItWhereThePageHasItsCues() throws Exception {
    try (Browsing browsing = new Browsing()) {
      Page page = browsing.page(800, 600);
      page.navigate(run.at("/voice/en.json").toString());
      short[] samples = decoded(page, run.at(ServedRun.track("opus", LATE)).toString());
      List<Ear.Heard> heard = new Ear(KnownTones.of(run.wetside)).listen(samples, Sampling.RATE);
      List<?> live =
          (List<?>)
              page.evaluate(
                  """
                  async (from) => (await (await fetch("/api/runs/1")).json()).cues
                    .map((cue) => [Date.parse(cue.at) - from, cue.act])
                    .filter(([at]) => at >= 0)""",
                  (double) LATE.toEpochMilli());
      assertThat(heard).hasSameSizeAs(live).hasSizeGreaterThan(10);
      for (int i = 0; i < heard.size(); i++) {
        List<?> cue = (List<?>) live.get(i);
        assertThat(heard.get(i).act()).isEqualTo(cue.get(1));
        assertThat(heard.get(i).milliseconds())
            .isCloseTo(
                ((Number) cue.get(0)).doubleValue(),
                org.assertj.core.data.Offset.offset(WITHIN_MS));
      }
    }
  }

  /** Tones, ticks, words and their moments: the page makes the same of a run as the track. */
  @Test
  void thePageAndTheTrackHaveOneScore() throws Exception {
    try (Browsing browsing = new Browsing()) {
      Page page = browsing.page(800, 600);
      page.navigate(run.at("/voice/en.json").toString());
      List<?> score =
          (List<?>)
              page.evaluate(
                  """
                  async (from) => {
                    const root = (await (await fetch("/")).text()).match(/\\/static\\/[^/"]+/)[0];
                    const { scoreOf } = await import(root + "/bench/score.js");
                    const book = await (await fetch("/voice/en.json")).json();
                    const run = await (await fetch("/api/runs/1")).json();
                    for (const cue of run.cues) { cue.at = Date.parse(cue.at); }
                    const end = run.cues[run.cues.length - 1].at;
                    return scoreOf(run.cues, book, { words: true, alive: true }, from - 1, end)
                      .map((one) => [
                        one.at - from,
                        one.notes.map((note) => note.hertz + "/" + note.milliseconds).join(" "),
                        one.clips.join(","),
                        one.clips.length > 0 ? one.wordsAt - from : -1].join("; "));
                  }""",
                  (double) HandTime.BEGIN.toEpochMilli());
      CueTrack track =
          run.wetside.makeTrack().ofRun(run.wetside.bench().look(1), HandTime.BEGIN, true);
      assertThat(new ArrayList<Object>(score))
          .hasSizeGreaterThan(100)
          .isEqualTo(new ArrayList<Object>(lines(track)));
    }
  }

  private static List<String> lines(CueTrack track) {
    return track.soundings().stream()
        .map(
            one ->
                String.join(
                    "; ",
                    Long.toString(one.at() - track.from()),
                    String.join(
                        " ",
                        one.tone().notes().stream()
                            .map(note -> note.hertz() + "/" + note.milliseconds())
                            .toList()),
                    String.join(",", one.clips()),
                    Long.toString(one.clips().isEmpty() ? -1 : one.wordsAt() - track.from())))
        .toList();
  }

  /** Decoded by the browser, 16,000 samples a second. */
  private static short[] decoded(Page page, String address) {
    String text =
        (String)
            page.evaluate(
                """
                async (address) => {
                  const bytes = await (await fetch(address)).arrayBuffer();
                  const sound = await new OfflineAudioContext(1, 1, 16000).decodeAudioData(bytes);
                  const samples = Int16Array.from(sound.getChannelData(0), (one) => one * 32767);
                  const whole = new Uint8Array(samples.buffer);
                  let text = "";
                  for (let i = 0; i < whole.length; i += 32768) {
                    text += String.fromCharCode(...whole.subarray(i, i + 32768));
                  }
                  return btoa(text);
                }""",
                address);
    ByteBuffer bytes =
        ByteBuffer.wrap(Base64.getDecoder().decode(text)).order(ByteOrder.LITTLE_ENDIAN);
    short[] samples = new short[bytes.capacity() / 2];
    IntStream.range(0, samples.length).forEach(i -> samples[i] = bytes.getShort(2 * i));
    return samples;
  }

  private static String text(HttpResponse<byte[]> answer) {
    return new String(answer.body(), StandardCharsets.UTF_8);
  }
}
