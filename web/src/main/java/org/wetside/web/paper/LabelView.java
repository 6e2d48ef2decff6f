package org.wetside.web.paper;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.core.shelf.Bottle;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.reference.Cautions;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.shelf.Hatches;

/**
 * What is printed on the label of a bottle. It says what is in it and how to handle it, nothing of
 * how good it still is: a label is read when that has long changed.
 *
 * @param letter the bottle's own
 * @param contents name of what is in it
 * @param role concentrate, stock, working, replenisher or waste
 * @param dilution how a working solution was made; may be empty
 * @param bath what it does to film
 * @param hatch its hatch
 * @param fullMl what it holds
 * @param mixedOn day, or null
 * @param openedOn day, or null
 * @param batch which batch it comes from; may be empty
 * @param owner whose it is; may be empty
 * @param cautions for handling it; never empty
 * @param address of its page
 */
public record LabelView(
    String letter,
    String contents,
    String role,
    String dilution,
    String bath,
    String hatch,
    double fullMl,
    @Nullable String mixedOn,
    @Nullable String openedOn,
    String batch,
    String owner,
    List<CautionView> cautions,
    String address) {
  /** Keeps an unmodifiable copy. */
  public LabelView {
    cautions = List.copyOf(cautions);
  }

  /** Of a bottle, whose pages are found at that address. */
  static LabelView of(Bottle bottle, String server) {
    BottleLabel label = bottle.label();
    return new LabelView(
        label.letter(),
        label.contents(),
        label.role().word(),
        label.dilution(),
        label.bath().word(),
        Hatches.of(label.bath()),
        label.full().millilitres(),
        label.mixedOn().map(LocalDate::toString).orElse(null),
        label.openedOn().map(LocalDate::toString).orElse(null),
        label.batch(),
        label.owner(),
        Cautions.open().whenHandling(label.contents(), label.bath()).stream()
            .map(CautionView::of)
            .toList(),
        server + "/shelf/" + label.letter());
  }
}
