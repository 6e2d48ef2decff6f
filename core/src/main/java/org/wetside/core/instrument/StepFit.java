package org.wetside.core.instrument;

import java.util.OptionalDouble;

/**
 * How well a calibration gives one step of its tablet back.
 *
 * @param step the step with what was seen
 * @param used whether it is used: the instrument still sees it apart from its neighbours
 * @param residual density read minus the tablet's [-]; empty for a step that is not used, and for
 *     the ends of a table, which have nothing on one side
 */
public record StepFit(SeenStep step, boolean used, OptionalDouble residual) {}
