package org.wetside.core.chemistry;

import java.util.Optional;
import java.util.OptionalDouble;
import org.wetside.core.source.Citation;
import org.wetside.core.source.Standing;

/**
 * What a handbook prints about one substance in place of another.
 *
 * @param specified what the formula asks for, as the row names it
 * @param held what is there instead, as the row names it
 * @param words the factor as printed; may be empty
 * @param factor the printed number, dimensionless; empty when there is none to multiply by
 * @param reversed whether it is printed the wrong way round
 * @param refusal why no factor may be used; empty when one may
 * @param note what else the row says; may be empty
 * @param citation where it is printed
 * @param standing how the row is known
 */
public record PrintedFactor(
    String specified,
    String held,
    String words,
    OptionalDouble factor,
    boolean reversed,
    Optional<String> refusal,
    String note,
    Citation citation,
    Standing standing) {}
