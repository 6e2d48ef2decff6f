package org.wetside.app.curves;

import org.wetside.core.strip.KeptStrip;

/**
 * One strip of a family.
 *
 * @param kept what was done and read
 * @param answer its curve and results
 */
public record FamilyMember(KeptStrip kept, ReadCurve.Answer answer) {}
