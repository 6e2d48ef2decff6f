package org.wetside.web.pairing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wetside.app.screens.Invitation;
import org.wetside.app.screens.Screen;
import org.wetside.web.page.Sheet;
import org.wetside.web.rolls.Days;

/**
 * Model of the page about screens.
 *
 * @param sheet the sheet
 * @param door where the server is found
 * @param screens those that are let in
 * @param code what is shown to let another in; empty when nothing is
 */
public record ScreensPage(
    Sheet sheet, Door door, List<ScreenLine> screens, Optional<CodePart> code) {
  /**
   * A screen in words.
   *
   * @param id its number
   * @param name what it is called
   * @param paired when it was let in
   * @param seen when it last asked for something
   */
  public record ScreenLine(long id, String name, String paired, String seen) {
    static ScreenLine of(Screen screen, Days days) {
      return new ScreenLine(
          screen.id(),
          screen.name(),
          days.day(screen.pairedAt()),
          days.day(screen.seenAt()) + ", " + Days.clock(screen.seenAt()));
    }
  }

  /**
   * A code that is shown.
   *
   * @param drawing the address with its key
   * @param figures in two groups, for a device without a camera
   * @param at where such a device types them
   * @param elsewhere further addresses of this machine, in case the first is not reached
   * @param until when the code ends
   */
  public record CodePart(
      QrDrawing drawing, String figures, String at, List<String> elsewhere, String until) {
    static CodePart of(Invitation code, List<String> addresses) {
      String first = addresses.get(0);
      return new CodePart(
          QrDrawing.of(PairAddress.of(first, code)),
          code.figures().substring(0, 4) + " " + code.figures().substring(4),
          first + "/pair",
          addresses.stream().skip(1).map(one -> one + "/pair").toList(),
          Days.clock(code.until()));
    }
  }

  /** Whether other devices can ask at all. */
  public boolean isOpen() {
    return door.reach().isLan();
  }

  /** Whether the network gave this machine an address. */
  public boolean isReachable() {
    return !door.addresses().isEmpty();
  }

  /** The screens by name, in a sentence. */
  public String names() {
    return screens.stream().map(ScreenLine::name).collect(Collectors.joining(", "));
  }
}
