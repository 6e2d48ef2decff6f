package org.wetside.core.process;

import java.time.Duration;

/**
 * A step at its place, as offsets from the beginning of the first pour.
 *
 * @param index position in the process, from 0
 * @param step what is done
 * @param begin the pour begins
 * @param full the tank is full; the step's own clock starts
 * @param drain the drain begins
 * @param end the next pour begins
 */
public record PlacedStep(
    int index, Step step, Duration begin, Duration full, Duration drain, Duration end) {}
