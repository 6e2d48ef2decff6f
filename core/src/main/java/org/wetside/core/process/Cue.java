package org.wetside.core.process;

import java.time.Duration;

/**
 * One thing to do at one moment: always with text, spoken words, a tone and a screen signal.
 *
 * @param id stable within a process: step, act and how many of that act came before in the step,
 *     for example {@code 1-agitate-3}
 * @param at from the beginning of the first pour; negative before it
 * @param inStep on the step's own clock (0 when the tank is full); negative before
 * @param step index of the step it belongs to
 * @param act what is asked for
 * @param count inversions or lifts to make; 0 when nothing is counted
 * @param length how long the act takes; zero for a moment
 * @param text for the eye
 * @param saying for the ear, before it is put into the words of a language
 * @param tone for the ear, without words
 * @param countIn how many soft ticks, a second apart, come just before it; 0 for none
 * @param signal for the eye and the hand, without words
 */
public record Cue(
    String id,
    Duration at,
    Duration inStep,
    int step,
    Act act,
    int count,
    Duration length,
    String text,
    Saying saying,
    Tone tone,
    int countIn,
    Signal signal) {

  Cue withCountIn(int ticks) {
    return new Cue(id, at, inStep, step, act, count, length, text, saying, tone, ticks, signal);
  }
}
