package org.wetside.app.home;

import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.READ;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Lets one process write in a home. It is a lock of the operating system, so it ends with the
 * process, however that ends; the text in the file only says who it was. The locked byte lies far
 * behind the text, so that the text can be read where locks forbid reading.
 */
public final class HomeLock implements AutoCloseable {
  private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

  private final FileChannel channel;
  private final Instant since;

  private HomeLock(FileChannel channel, Instant since) {
    this.channel = channel;
    this.since = since;
  }

  /**
   * Takes the lock at once or not at all.
   *
   * @param now the present moment, to say since when
   * @throws HomeInUseException when another process has it
   */
  public static HomeLock take(Home home, Instant now) {
    home.make();
    try {
      FileChannel channel = FileChannel.open(home.lock(), CREATE, READ, WRITE);
      if (tryLock(channel) == null) {
        channel.close();
        throw new HomeInUseException(home, holder(home));
      }
      HomeLock lock = new HomeLock(channel, now);
      lock.write(Optional.empty());
      return lock;
    } catch (IOException failure) {
      throw new UncheckedIOException(
          "the data folder " + home.folder() + " cannot be locked: " + failure, failure);
    }
  }

  /** Adds to the lock file where the server listens, for whoever is refused. */
  public void servingAt(String address) {
    try {
      write(Optional.of(address));
    } catch (IOException failure) {
      throw new UncheckedIOException("writing the lock file: " + failure, failure);
    }
  }

  /** Gives the home free. */
  @Override
  public void close() {
    if (!channel.isOpen()) {
      return;
    }
    try {
      channel.truncate(0);
      channel.close();
    } catch (IOException failure) {
      throw new UncheckedIOException("giving the lock back: " + failure, failure);
    }
  }

  private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
    try {
      return channel.tryLock(LOCKED_BYTE, 1, false);
    } catch (OverlappingFileLockException heldByThisProcess) {
      return null;
    }
  }

  private static Optional<Holder> holder(Home home) {
    try {
      return Holder.parse(Files.readString(home.lock()));
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  private void write(Optional<String> address) throws IOException {
    Holder holder = new Holder(ProcessHandle.current().pid(), since, address);
    byte[] text = holder.written().getBytes(StandardCharsets.UTF_8);
    channel.truncate(0);
    channel.write(ByteBuffer.wrap(text), 0);
  }
}
