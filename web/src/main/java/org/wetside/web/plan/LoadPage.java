package org.wetside.web.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.page.Sheet;
import org.wetside.web.process.OrderWarningView;

/**
 * Model of one load's page: how to mix it, what to check, on to the Bench.
 *
 * @param sheet the sheet
 * @param load the load
 * @param process short name of the process that leads it
 * @param processName as people call it
 * @param source where its time is from
 * @param concentrate what to measure out of the bottle; empty when the parts are not known
 * @param waters what to pour of each water; empty when nobody said what there is
 * @param waterWords what is to be said of the water
 * @param alternative the alternative to tempering; empty when there is nothing to temper
 * @param cautions at the moment of handling
 * @param stock whether there is enough developer; null when its parts are not known
 * @param wash what is to be said of the wash water; empty when it is near
 * @param warnings baths that should not follow one another as they are
 * @param checks what is looked at before the first pour
 */
public record LoadPage(
    Sheet sheet,
    LoadLine load,
    String process,
    String processName,
    String source,
    String concentrate,
    List<Pour> waters,
    String waterWords,
    String alternative,
    List<CautionView> cautions,
    @Nullable StockPart stock,
    String wash,
    List<OrderWarningView> warnings,
    LoadChecks checks) {

  /** So much of that water. */
  public record Pour(String name, String volume, String temperature) {}
}
