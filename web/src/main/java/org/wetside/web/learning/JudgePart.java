package org.wetside.web.learning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.drawer.RollRecord;
import org.wetside.app.learning.JudgeRoll;
import org.wetside.app.learning.Learning;
import org.wetside.core.learning.ContrastWord;
import org.wetside.core.learning.EdgePrint;
import org.wetside.core.learning.Judgement;
import org.wetside.core.learning.Lesson;
import org.wetside.core.learning.Reading;
import org.wetside.core.learning.ReferencePair;
import org.wetside.core.learning.ShadowWord;
import org.wetside.core.learning.Used;
import org.wetside.web.page.FilledForm;

/**
 * The part of a roll's page where its negatives are judged.
 *
 * @param number the roll
 * @param form the form, as it stands or was typed
 * @param whyNot why it cannot be judged; null when it can
 * @param said what its judgement says, line by line; empty when it is not judged
 */
public record JudgePart(
    String number, FilledForm form, @Nullable String whyNot, List<String> said) {
  private static final Map<String, String> EDGES = new LinkedHashMap<>();
  private static final Map<String, String> SHADOWS = new LinkedHashMap<>();
  private static final Map<String, String> CONTRASTS = new LinkedHashMap<>();

  static {
    EDGES.put("", "not looked at");
    for (EdgePrint edge : EdgePrint.values()) {
      EDGES.put(edge.word(), edge.word());
    }
    EDGES.remove(EdgePrint.NONE.word());
    SHADOWS.put("", "not said");
    for (ShadowWord word : ShadowWord.values()) {
      SHADOWS.put(word.word(), word.word());
    }
    CONTRASTS.put("", "not said");
    for (ContrastWord word : ContrastWord.values()) {
      CONTRASTS.put(word.word(), word.word());
    }
  }

  /** Keeps an unmodifiable copy. */
  public JudgePart {
    said = List.copyOf(said);
  }

  /** As a roll stands. */
  public static JudgePart of(Learning learning, RollRecord record) {
    JudgeRoll.Ready ready = learning.judgeRoll().ready(record);
    return new JudgePart(
        record.roll().number(),
        FilledForm.of(values(ready)),
        ready.judgeable().orElse(null),
        said(learning.judgeRoll().toldNow(record.roll().number())));
  }

  /** The same with the form as it was typed, and refused. */
  JudgePart with(FilledForm refused) {
    return new JudgePart(number, refused, whyNot, said);
  }

  /** Whether it is judged. */
  public boolean isJudged() {
    return !said.isEmpty();
  }

  /** Words for the edge print, by what is sent. */
  public Map<String, String> edges() {
    return EDGES;
  }

  /** Words for shadows, by what is sent. */
  public Map<String, String> shadows() {
    return SHADOWS;
  }

  /** Words for contrast, by what is sent. */
  public Map<String, String> contrasts() {
    return CONTRASTS;
  }

  private static Map<String, String> values(JudgeRoll.Ready ready) {
    Map<String, String> values = new LinkedHashMap<>();
    Used used = ready.used();
    values.put("water", used.water());
    values.put("thermometer", used.thermometer());
    values.put("batch", used.batch());
    ready
        .earlier()
        .map(Judgement::seen)
        .ifPresent(
            seen -> {
              values.put("edge", seen.edge() == EdgePrint.NONE ? "" : seen.edge().word());
              values.put("shadows", seen.shadows().map(ShadowWord::word).orElse(""));
              values.put("contrast", seen.contrast().map(ContrastWord::word).orElse(""));
              values.put("base-fog", text(seen.pair().flatMap(ReferencePair::baseFog)));
              values.put("shadow-density", text(seen.pair().map(ReferencePair::shadow)));
              values.put("light-density", text(seen.pair().map(ReferencePair::light)));
            });
    return values;
  }

  private static String text(Optional<Double> number) {
    return number.map(String::valueOf).orElse("");
  }

  private static List<String> said(Optional<Lesson.Told> told) {
    List<String> lines = new ArrayList<>();
    told.ifPresent(
        one -> {
          lines.add(
              one.time()
                  .says()
                  .map(
                      said ->
                          String.format(
                              java.util.Locale.ROOT,
                              "It alone says %+.0f %% on the maker's time, %s.",
                              100 * (Math.exp(said.value()) - 1),
                              one.time().words()))
                  .orElseGet(() -> sentence(one.time())));
          lines.add(
              one.index()
                  .says()
                  .map(
                      said ->
                          String.format(
                              java.util.Locale.ROOT,
                              "It alone says %+.1f stops on the index, %s.",
                              said.value(),
                              one.index().words()))
                  .orElseGet(() -> sentence(one.index())));
        });
    return lines;
  }

  private static String sentence(Reading nothing) {
    String words = nothing.words();
    return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
  }
}
