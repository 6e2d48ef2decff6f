package org.wetside.web.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.app.bench.BenchSnapshot;
import org.wetside.app.care.BathCare;
import org.wetside.core.safety.Objection;
import org.wetside.web.mixing.CautionView;

/**
 * What is said of a bath when it is handled.
 *
 * @param brief hands, eyes and air in a line; that nothing is on file for some of it comes first
 * @param cautions all on file, what must never meet the bath last; at least one
 * @param against what speaks against pouring it straight after the bath before; empty for most
 */
public record CareView(String brief, List<CautionView> cautions, List<AgainstView> against) {
  /**
   * What speaks against two baths that follow one another.
   *
   * @param text both baths, the reason, the way out, source and standing
   * @param brief which two, and the way out
   * @param refused whether it must not be done at all
   * @param rinse whether plain water between the two is the way out
   * @param before number of the step the rinse comes before, from 1
   * @param source what the reason is cited from
   * @param standing how it is known
   */
  public record AgainstView(
      String text,
      String brief,
      boolean refused,
      boolean rinse,
      int before,
      String source,
      String standing) {
    static AgainstView of(Objection objection) {
      return new AgainstView(
          objection.sentence(),
          objection.rule().name() + ": " + objection.rule().advice(),
          objection.isRefused(),
          objection.rule().rinse(),
          objection.position() + 1,
          objection.rule().citation().toString(),
          objection.rule().standing().word());
    }
  }

  /** Null for plain water, for light, and once the run is over. */
  static @Nullable CareView of(BenchSnapshot at, int step) {
    return at.care().stream()
        .filter(care -> care.step() == step)
        .findFirst()
        .map(CareView::of)
        .orElse(null);
  }

  private static CareView of(BathCare care) {
    return new CareView(
        care.inShort(),
        care.cautions().stream().map(CautionView::of).toList(),
        care.against().stream().map(AgainstView::of).toList());
  }
}
