package org.wetside.web.pairing;

import java.util.List;
import org.wetside.app.screens.Invitation;

/**
 * A code that lets one screen in, once.
 *
 * @param addresses what the new screen opens, with the key in it; the likeliest first
 * @param figures for a device that cannot open them: typed at {@code /pair}
 * @param until when the code ends, used or not
 */
public record CodeView(List<String> addresses, String figures, String until) {
  static CodeView of(Invitation code, Door door) {
    return new CodeView(
        door.addresses().stream().map(one -> PairAddress.of(one, code)).toList(),
        code.figures(),
        code.until().toString());
  }
}
