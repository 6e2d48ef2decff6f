package org.wetside.web.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetside.app.formula.AtHand;
import org.wetside.app.formula.FormulaBook;
import org.wetside.app.formula.WeighOut;
import org.wetside.core.quantity.Units;
import org.wetside.web.formula.FormulaView;
import org.wetside.web.formula.IngredientView;
import org.wetside.web.formula.MixingCard;

/** The cards of formulas of every shape, read back. */
class MixingCardTest {
  private static final FormulaBook BOOK = FormulaBook.onFileOnly();

  @ParameterizedTest
  @ValueSource(strings = {"D-76", "DK-20", "F-5", "TF-3", "SB-1", "CALGON"})
  void everyStepStandsOnItInBlackOnWhite(String code) throws IOException {
    FormulaView view =
        FormulaView.of(
            new WeighOut(BOOK, () -> AtHand.USUAL)
                .answer(
                    new WeighOut.Question(
                        code, Optional.empty(), List.of(), Optional.empty(), Optional.empty())));
    Printed card = Printed.of(MixingCard.pdf(view, Units.METRIC, "letter"));
    assertThat(card.pages()).isBetween(1, 2);
    assertThat(card.colour()).isLessThan(8);
    assertThat(card.text()).contains(code, view.standing());
    for (IngredientView one : view.ingredients()) {
      assertThat(card.text()).contains(one.name());
      assertThat(one.cautions()).as(one.name()).isNotEmpty();
    }
  }
}
