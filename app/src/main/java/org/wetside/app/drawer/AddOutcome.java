package org.wetside.app.drawer;

import java.util.List;
import org.wetside.core.plan.Roll;
import org.wetside.core.plan.RollBatch;
import org.wetside.core.quantity.BadValueException;

/** What became of typed rolls: all are in the drawer, or none. */
public sealed interface AddOutcome permits AddOutcome.Kept, AddOutcome.Refused {
  /** All are in the drawer, in the order in which they were typed. */
  record Kept(List<Roll> rolls) implements AddOutcome {
    public Kept {
      rolls = List.copyOf(rolls);
    }
  }

  /** None is; every line that is no roll, with its reason. */
  record Refused(List<RollBatch.BadLine> lines) implements AddOutcome {
    public Refused {
      lines = List.copyOf(lines);
    }

    /** All reasons in one message, each under the number of its line. */
    BadValueException message() {
      StringBuilder text = new StringBuilder("none was put into the drawer");
      for (RollBatch.BadLine line : lines) {
        text.append("\n  line ").append(line.number()).append(": ").append(line.reason());
      }
      return new BadValueException(
          "rolls", lines.size() == 1 ? "1 line" : lines.size() + " lines", text.toString());
    }
  }

  /**
   * The rolls that were kept.
   *
   * @throws BadValueException when none was, with every line and its reason
   */
  default List<Roll> orRefuse() {
    if (this instanceof Refused refused) {
      throw refused.message();
    }
    return ((Kept) this).rolls();
  }
}
