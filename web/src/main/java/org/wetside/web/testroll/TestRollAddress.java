package org.wetside.web.testroll;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Optional;
import org.wetside.app.Wetside;
import org.wetside.core.testroll.KeptTestRoll;

/** Where the pages of test rolls are found, and the roll that an address names. */
final class TestRollAddress {
  /** All of them. */
  static final String ALL = "/curves/testrolls";

  /** One of them. */
  static final String ONE = ALL + "/{roll}";

  /** One of its pieces. */
  static final String PIECE = ONE + "/pieces/{piece}";

  private TestRollAddress() {}

  static String of(KeptTestRoll kept) {
    return ALL + "/" + kept.id();
  }

  static String of(KeptTestRoll kept, int piece) {
    return of(kept) + "/pieces/" + piece;
  }

  /**
   * The roll of the address.
   *
   * @throws NotFoundResponse when there is none
   */
  static KeptTestRoll known(Wetside wetside, Context ctx) {
    String number = ctx.pathParam("roll");
    Optional<KeptTestRoll> found =
        number.matches("\\d{1,15}")
            ? wetside.sensitometry().keepTestRolls().find(Long.parseLong(number))
            : Optional.empty();
    return found.orElseThrow(() -> new NotFoundResponse("There is no test roll " + number + "."));
  }

  /**
   * The piece of the address.
   *
   * @throws NotFoundResponse when it is not 1 to 3
   */
  static int piece(Context ctx) {
    String piece = ctx.pathParam("piece");
    if (!piece.matches("[1-3]")) {
      throw new NotFoundResponse("A test roll has pieces 1 to 3, none " + piece + ".");
    }
    return Integer.parseInt(piece);
  }
}
