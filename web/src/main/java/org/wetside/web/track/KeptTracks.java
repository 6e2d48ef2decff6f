package org.wetside.web.track;

import java.util.LinkedHashMap;
import java.util.Map;
import org.wetside.app.sound.CueTrack;
import org.wetside.app.sound.Format;
import org.wetside.app.sound.SoundFile;

/**
 * The encoded tracks that were asked for last. A player asks for one file many times, part by part.
 */
final class KeptTracks {
  private static final int KEPT = 4;

  private final Map<CueTrack, SoundFile> kept =
      new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<CueTrack, SoundFile> eldest) {
          return size() > KEPT;
        }
      };

  /** That track as such a file; what is made while it is read is not kept. */
  synchronized SoundFile file(CueTrack track, Format format) {
    return format == Format.WAV ? format.write(track) : kept.computeIfAbsent(track, format::write);
  }
}
