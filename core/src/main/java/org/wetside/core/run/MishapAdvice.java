package org.wetside.core.run;

import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * Something that can happen in a run, and what to do about it.
 *
 * @param what what happened, as a person would say it
 * @param firstMinute what to do at once
 * @param afterwards what to do, or expect, later
 * @param standing how the advice is known
 * @param citation where it stands
 */
public record MishapAdvice(
    String what, String firstMinute, String afterwards, Standing standing, Citation citation) {}
