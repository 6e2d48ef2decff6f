package org.wetside.web.formula;

import org.wetside.core.chemistry.Measures;

/**
 * The syringe or graduate to take.
 *
 * @param name for example {@code graduate of 100 mL}
 * @param capacityMl what it holds
 * @param divisionMl between two marks
 * @param fillings how many times it is filled
 * @param errorMl half a division at each filling
 * @param errorPercent the same of what is wanted
 * @param standing how the measure is known; {@code measured} for your own
 */
public record MeasureView(
    String name,
    double capacityMl,
    double divisionMl,
    int fillings,
    double errorMl,
    double errorPercent,
    String standing) {
  static MeasureView of(Measures.Reading reading) {
    return new MeasureView(
        reading.measure().name(),
        reading.measure().capacity().millilitres(),
        reading.measure().division().millilitres(),
        reading.fillings(),
        reading.error().millilitres(),
        reading.errorPercent(),
        reading.measure().standing().word());
  }
}
