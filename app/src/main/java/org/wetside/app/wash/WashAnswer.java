package org.wetside.app.wash;

import java.util.Optional;
import org.wetside.core.wash.WashForecast;
import org.wetside.core.wash.WashMethod;

/**
 * A wash foreseen.
 *
 * @param forecast what it comes to
 * @param method the printed way it follows; empty for fills or running water of one's own
 * @param dwellSaid whether it was said how long the water stays: without it only the rule of fills
 *     can be given
 * @param startSaid whether the strength of the fixer was said
 */
public record WashAnswer(
    WashForecast forecast, Optional<WashMethod> method, boolean dwellSaid, boolean startSaid) {}
