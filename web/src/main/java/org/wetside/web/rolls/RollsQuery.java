package org.wetside.web.rolls;

import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;

/**
 * Which rolls are asked for; null does not narrow.
 *
 * @param number only this one, with everything that was done to it
 * @param text words, each of which was written of the roll; the beginning of one is enough
 * @param state waiting, loaded, processed, filed or withdrawn
 */
record RollsQuery(@Nullable String number, @Nullable String text, @Nullable String state) {
  RollsView answer(Wetside wetside) {
    return number == null ? RollsView.found(wetside, text, state) : RollsView.one(wetside, number);
  }
}
