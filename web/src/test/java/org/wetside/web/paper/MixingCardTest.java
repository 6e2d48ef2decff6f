package org.wetside.web.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetside.app.formula.FormulaBook;
import org.wetside.app.formula.WeighOut;
import org.wetside.core.chemistry.Formula;
import org.wetside.core.quantity.Units;
import org.wetside.web.formula.FormulaView;
import org.wetside.web.formula.IngredientView;
import org.wetside.web.formula.MixingCard;

/** The card of every formula that can be mixed, read back. */
class MixingCardTest {
  private static final FormulaBook BOOK = FormulaBook.onFileOnly();

  static List<String> mixable() {
    return BOOK.all().stream().filter(one -> one.refusal().isEmpty()).map(Formula::code).toList();
  }

  @ParameterizedTest
  @MethodSource("mixable")
  void everyStepStandsOnItInBlackOnWhite(String code) throws IOException {
    FormulaView view =
        FormulaView.of(
            new WeighOut(BOOK)
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
