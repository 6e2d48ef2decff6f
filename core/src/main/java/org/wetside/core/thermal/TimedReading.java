package org.wetside.core.thermal;

import java.time.Duration;
import org.wetside.core.quantity.Temperature;

/**
 * A bath's temperature at a moment.
 *
 * @param elapsed since the first reading or any other common start
 * @param temperature corrected
 */
public record TimedReading(Duration elapsed, Temperature temperature) {}
