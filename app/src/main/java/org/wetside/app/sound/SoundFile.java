package org.wetside.app.sound;

import java.io.InputStream;

/** A track as a file, of which any part can be read. */
public sealed interface SoundFile permits WavFile, OpusFile {
  /** Its length in bytes. */
  long size();

  /** Its bytes from that one on. */
  InputStream from(long first);
}
