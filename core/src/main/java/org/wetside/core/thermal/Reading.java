package org.wetside.core.thermal;

import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.TemperatureDifference;

/**
 * A thermometer's reading, as it stood on the thermometer and as corrected.
 *
 * @param raw what the thermometer showed
 * @param corrected raw plus the thermometer's correction
 * @param uncertainty half width of the band around {@code corrected}, at least 0
 */
public record Reading(Temperature raw, Temperature corrected, TemperatureDifference uncertainty) {}
