package org.wetside.web.waste;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wetside.app.waste.KeepJugs;
import org.wetside.core.bath.BathKind;
import org.wetside.core.waste.FilledJug;
import org.wetside.core.waste.HandedIn;
import org.wetside.core.waste.Poured;
import org.wetside.core.waste.WasteKind;
import org.wetside.reference.Caution;
import org.wetside.reference.Cautions;
import org.wetside.reference.Disposal;
import org.wetside.reference.UsedFixer;
import org.wetside.web.mixing.CautionView;

/**
 * A jug as JSON.
 *
 * @param jug its name
 * @param kind silver-bearing, developer, stop or other
 * @param takes what belongs into it
 * @param holdsMl how much it takes
 * @param filledMl how much is in it
 * @param silver estimate; null when no used fixer is in it
 * @param silverWords the same in words, or why there is none
 * @param inside what was poured in since it was last empty, the oldest first
 * @param handedIn every time it was handed in, the oldest first
 * @param unknown what nothing is on file about, so that no combination with it can be judged
 * @param cautions for handling it; what must never meet it first
 * @param disposal where it goes
 */
public record JugView(
    String jug,
    String kind,
    String takes,
    double holdsMl,
    double filledMl,
    @Nullable SilverView silver,
    String silverWords,
    List<PouredView> inside,
    List<HandedInView> handedIn,
    List<String> unknown,
    List<CautionView> cautions,
    List<CautionView> disposal) {

  /**
   * One pouring.
   *
   * @param line its number in the book
   * @param at when
   * @param what what it was
   * @param bath what it did to film; null for what is no bath
   * @param bottle letter of its bottle; empty when poured by hand
   * @param volumeMl how much
   * @param note may be empty
   */
  public record PouredView(
      long line,
      String at,
      String what,
      @Nullable String bath,
      String bottle,
      double volumeMl,
      String note) {
    static PouredView of(Poured poured) {
      return new PouredView(
          poured.line(),
          poured.at().toString(),
          poured.contents(),
          poured.bath().map(BathKind::word).orElse(null),
          poured.bottle(),
          poured.volume().millilitres(),
          poured.note());
    }
  }

  /**
   * One handing in.
   *
   * @param on the day
   * @param to whom
   * @param volumeMl what was in it
   * @param note may be empty
   */
  public record HandedInView(String on, String to, double volumeMl, String note) {
    static HandedInView of(HandedIn handed) {
      return new HandedInView(
          handed.on().toString(), handed.to(), handed.volume().millilitres(), handed.note());
    }
  }

  /** The view of a jug. */
  public static JugView of(FilledJug filled, KeepJugs jugs) {
    WasteKind kind = filled.jug().kind();
    var silver = UsedFixer.silver().in(filled.inside());
    return new JugView(
        filled.jug().name(),
        kind.word(),
        kind.takes(),
        filled.jug().holds().millilitres(),
        filled.filled().millilitres(),
        SilverView.of(silver),
        silver.words(),
        filled.inside().stream().map(PouredView::of).toList(),
        filled.handedIn().stream().map(HandedInView::of).toList(),
        jugs.unknownIn(filled),
        cautions(filled).stream().map(CautionView::of).toList(),
        Disposal.open().of(typical(kind)).stream().map(CautionView::of).toList());
  }

  /** What must never meet it, then what is on file about everything in it. */
  private static Set<Caution> cautions(FilledJug filled) {
    Cautions onFile = Cautions.open();
    Set<Caution> all = new LinkedHashSet<>(onFile.ofMixturesWith(typical(filled.jug().kind())));
    for (Poured poured : filled.inside()) {
      if (poured.bath().isPresent()) {
        all.addAll(onFile.ofMixturesWith(poured.bath().get()));
      }
    }
    for (Poured poured : filled.inside()) {
      all.addAll(
          poured.ingredients().isEmpty()
              ? onFile.of(poured.contents())
              : onFile.of(poured.ingredients()));
    }
    return all;
  }

  private static BathKind typical(WasteKind kind) {
    return switch (kind) {
      case SILVER -> BathKind.FIXER;
      case DEVELOPER -> BathKind.DEVELOPER;
      case STOP -> BathKind.STOP_BATH;
      case OTHER -> BathKind.BLEACH;
    };
  }
}
