package org.wetside.web.strip;

import org.jspecify.annotations.Nullable;
import org.wetside.app.curves.FamilyAnswer;
import org.wetside.app.curves.KeepMeasuredTime;
import org.wetside.core.sensitometry.TimeForN;
import org.wetside.web.page.FilledForm;

/**
 * The development for one contrast of subject, and the field that puts it among the times.
 *
 * @param n −2 to +2
 * @param name {@code N+1}
 * @param gradient contrast that it wants
 * @param time development time, rounded to 5 s; empty when the curves do not reach it
 * @param band of 90 %
 * @param index exposure index as it was typed, or the standard one nearest to the speed then; empty
 *     when no speed is known
 * @param message why it was not kept; null when nothing is wrong
 */
public record TimeRow(
    int n,
    String name,
    String gradient,
    String time,
    String band,
    String index,
    @Nullable String message) {
  static TimeRow of(TimeForN one, FamilyAnswer family, FilledForm form) {
    String field = field(one.n());
    return new TimeRow(
        one.n(),
        FamilyText.n(one.n()),
        Digits.two(one.gradient()),
        one.time().map(time -> Digits.clock(KeepMeasuredTime.rounded(time.seconds()))).orElse(""),
        one.time().map(FamilyText::band).orElse(""),
        form.values().containsKey(field)
            ? form.value(field)
            : one.time()
                .flatMap(time -> family.settingAt(time.seconds()))
                .map(step -> Digits.speed(step.iso()))
                .orElse(""),
        form.message(field));
  }

  /** Name of the field of that line. */
  static String field(int n) {
    return "ei" + (n + 2);
  }

  /** The same. */
  public String field() {
    return field(n);
  }

  /** Whether the curves reach it. */
  public boolean isReached() {
    return !time.isEmpty();
  }
}
