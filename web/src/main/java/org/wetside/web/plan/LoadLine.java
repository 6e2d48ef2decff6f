package org.wetside.web.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.core.source.Standing;

/**
 * One load of the evening, as a line of the plan.
 *
 * @param number its place in the evening
 * @param id the load
 * @param run its run; null before it was brought to the Bench
 * @param done whether its film hangs
 * @param rolls the numbers of its rolls
 * @param tank its tank
 * @param how film, developer, temperature
 * @param mix what is poured, in words
 * @param bottle letter of the developer's bottle; empty when not said
 * @param time development time
 * @param standing how it is known
 * @param band nine in ten, in words; empty when not known
 * @param hangs the clock time at which it hangs, or hung
 * @param from the clock time of the first pour
 * @param open what is still open about it, in sentences
 */
public record LoadLine(
    String number,
    long id,
    @Nullable Long run,
    boolean done,
    String rolls,
    String tank,
    String how,
    String mix,
    String bottle,
    String time,
    Standing standing,
    String band,
    String hangs,
    String from,
    List<String> open) {}
