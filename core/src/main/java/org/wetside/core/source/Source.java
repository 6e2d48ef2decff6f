package org.wetside.core.source;

/**
 * One entry of the bibliography.
 *
 * @param id identity used by citations
 * @param title title as printed
 * @param publication publisher's number or series
 * @param date date or edition as printed
 * @param address where it was read; may be empty
 * @param obtained how it was read: directly, in an excerpt, in a transcription
 * @param notes limits of the reading
 */
public record Source(
    String id,
    String title,
    String publication,
    String date,
    String address,
    String obtained,
    String notes) {}
