package org.wetside.core.process;

import java.util.List;

/**
 * A short pattern of notes by which an act is known without looking.
 *
 * @param notes played one after another
 */
public record Tone(List<Note> notes) {
  /**
   * One note.
   *
   * @param hertz pitch; 0 is silence
   * @param milliseconds how long
   */
  public record Note(int hertz, int milliseconds) {}

  public Tone {
    notes = List.copyOf(notes);
  }

  /** From pitch and length in turn: {@code of(880, 120, 0, 80)}. */
  static Tone of(int... pitchAndLength) {
    Note[] notes = new Note[pitchAndLength.length / 2];
    for (int i = 0; i < notes.length; i++) {
      notes[i] = new Note(pitchAndLength[2 * i], pitchAndLength[2 * i + 1]);
    }
    return new Tone(List.of(notes));
  }

  /** All of it. */
  public int milliseconds() {
    return notes.stream().mapToInt(Note::milliseconds).sum();
  }
}
