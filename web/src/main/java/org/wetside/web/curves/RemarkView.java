package org.wetside.web.curves;

import org.wetside.core.sensitometry.CurveResult;

/**
 * Why a result, or its band, is not there.
 *
 * @param of the result
 * @param reason in words
 */
public record RemarkView(String of, String reason) {
  static RemarkView of(CurveResult result) {
    return new RemarkView(result.measure().words(), result.remark());
  }
}
