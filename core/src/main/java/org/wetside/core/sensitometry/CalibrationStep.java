package org.wetside.core.sensitometry;

/**
 * How well a calibration gives one step of its tablet back.
 *
 * @param pixel as seen
 * @param density as the tablet says [-]
 * @param residual density read minus the tablet's [-]; for a table, read without this step; NaN for
 *     its first and last, which have nothing on one side
 */
public record CalibrationStep(double pixel, double density, double residual) {}
