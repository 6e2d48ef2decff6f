package org.wetside.acceptance.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.app.Wetside;
import org.wetside.app.process.ShowCues;
import org.wetside.app.sound.CueTrack;
import org.wetside.app.sound.Format;
import org.wetside.app.sound.MakeTrack;
import org.wetside.app.sound.OpusFile;
import org.wetside.app.sound.Sampling;
import org.wetside.core.process.Cue;

/** Every cue of a plan is in its track once, where the plan has it, as an ear finds it. */
class CueOnsetsTest {
  private static final double WITHIN_MS = 10;
  private static final long MOST_BYTES = 2_000_000;
  private static final double LEAST_TIMES_REAL = 50;

  private Wetside wetside;
  private Ear ear;

  @BeforeEach
  void open(@TempDir Path home) {
    wetside = Wetside.open(home, Clock.systemUTC());
    ear = new Ear(KnownTones.of(wetside));
  }

  @AfterEach
  void close() {
    wetside.close();
  }

  private ShowCues.Cues plan(String process) {
    return wetside.showCues().of(process, Optional.of(Duration.ofMinutes(9)));
  }

  private CueTrack track(String process) {
    return wetside.makeTrack().ofPlan(plan(process), true);
  }

  private static byte[] bytes(CueTrack track, Format format) throws IOException {
    try (InputStream all = format.write(track).from(0)) {
      return all.readAllBytes();
    }
  }

  /** The samples of a file as any Java program reads it. */
  private static short[] wav(InputStream file) throws Exception {
    try (AudioInputStream sound = AudioSystem.getAudioInputStream(file)) {
      assertThat(sound.getFormat().getSampleRate()).isEqualTo(Sampling.RATE);
      ByteBuffer bytes = ByteBuffer.wrap(sound.readAllBytes()).order(ByteOrder.LITTLE_ENDIAN);
      short[] samples = new short[bytes.capacity() / 2];
      bytes.asShortBuffer().get(samples);
      return samples;
    }
  }

  private void eachCueOnce(String process, short[] samples, String how) {
    List<Cue> cues = plan(process).cues();
    List<Ear.Heard> heard = ear.listen(samples, Sampling.RATE);
    assertThat(heard.stream().map(Ear.Heard::act).toList())
        .as(process + " as " + how)
        .isEqualTo(cues.stream().map(cue -> cue.act().word()).toList());
    double worst = 0;
    long first = cues.get(0).at().toMillis() - MakeTrack.LEAD_MILLISECONDS;
    for (int i = 0; i < heard.size(); i++) {
      double due = cues.get(i).at().toMillis() - first;
      worst = Math.max(worst, Math.abs(heard.get(i).milliseconds() - due));
    }
    System.out.printf(
        Locale.ROOT, "%s as %s: %d cues, worst %.1f ms%n", process, how, heard.size(), worst);
    assertThat(worst).as(process + " as " + how).isLessThanOrEqualTo(WITHIN_MS);
  }

  @ParameterizedTest
  @ValueSource(strings = {"small-tank", "rotary", "stand", "two-bath", "monobath", "tray"})
  void everyCueIsThereOnceWithinTenMilliseconds(String process) throws Exception {
    CueTrack track = track(process);
    eachCueOnce(process, wav(new ByteArrayInputStream(bytes(track, Format.WAV))), "WAV");
    eachCueOnce(process, OpusFile.decode(bytes(track, Format.OPUS)), "Opus");
  }

  @Test
  void anotherDecoderHearsTheSame(@TempDir Path folder) throws Exception {
    Path decoder = Path.of("/usr/bin/opusdec");
    assertThat(decoder).as("the other decoder, brought by ./verify --install").isExecutable();
    Path opus = folder.resolve("track.opus");
    Path wav = folder.resolve("track.wav");
    Files.write(opus, bytes(track("small-tank"), Format.OPUS));
    Process process =
        new ProcessBuilder(
                decoder.toString(), "--quiet", "--rate", "16000", opus.toString(), wav.toString())
            .inheritIO()
            .start();
    assertThat(process.waitFor()).isZero();
    try (InputStream file = new ByteArrayInputStream(Files.readAllBytes(wav))) {
      eachCueOnce("small-tank", wav(file), "decoded by opusdec");
    }
  }

  @Test
  void theOpusOfAHalfHourIsSmallAndQuicklyMade() {
    ShowCues.Cues plan = wetside.showCues().of("small-tank", Optional.of(Duration.ofMinutes(14)));
    long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    CueTrack track = wetside.makeTrack().ofPlan(plan, true);
    long size = Format.OPUS.write(track).size();
    double seconds = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before) / 1e9;
    double times = track.milliseconds() / 1000.0 / seconds;
    System.out.printf(
        Locale.ROOT,
        "Opus of %.1f min: %d kB, made in %.1f s of processor time, %.0f times real time%n",
        track.milliseconds() / 60_000.0,
        size / 1000,
        seconds,
        times);
    assertThat(track.milliseconds()).isGreaterThan(Duration.ofMinutes(29).toMillis());
    assertThat(size).isLessThan(MOST_BYTES);
    assertThat(times).isGreaterThan(LEAST_TIMES_REAL);
  }

  @Test
  void anEarThatIsGivenSpeechAndTicksAloneHearsNoAct() {
    byte[] clips = org.wetside.reference.VoiceClips.in("en").sound();
    assertThat(ear.listen(OpusFile.decode(clips), Sampling.RATE)).isEmpty();
  }
}
