package org.wetside.web.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import java.util.zip.CRC32;

/**
 * A short mark that changes with any of the static files. In the packaged program it is made from
 * the checksums that stand in the archive's directory, so that no file need be read at start.
 */
final class ContentMark {
  private static final String FOLDER = "static/";

  private ContentMark() {}

  static String ofStaticFiles() {
    CRC32 whole = new CRC32();
    try {
      Path code = whereTheCodeIs();
      if (Files.isDirectory(code)) {
        addFolder(whole, code.resolve(FOLDER));
      } else {
        addArchive(whole, code);
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException("static files", unreadable);
    }
    return String.format("%08x", whole.getValue());
  }

  private static Path whereTheCodeIs() {
    URI uri;
    try {
      uri = ContentMark.class.getProtectionDomain().getCodeSource().getLocation().toURI();
    } catch (URISyntaxException notAFile) {
      throw new IllegalStateException("the program's own place cannot be named", notAFile);
    }
    return Path.of(uri);
  }

  private static void addArchive(CRC32 whole, Path archive) throws IOException {
    try (JarFile jar = new JarFile(archive.toFile(), false)) {
      Enumeration<JarEntry> entries = jar.entries();
      while (entries.hasMoreElements()) {
        JarEntry entry = entries.nextElement();
        if (entry.getName().startsWith(FOLDER)) {
          add(whole, entry.getName(), entry.getCrc());
        }
      }
    }
  }

  private static void addFolder(CRC32 whole, Path folder) throws IOException {
    List<Path> files;
    try (Stream<Path> walk = Files.walk(folder)) {
      files = walk.filter(Files::isRegularFile).sorted().toList();
    }
    for (Path file : files) {
      CRC32 one = new CRC32();
      one.update(Files.readAllBytes(file));
      add(whole, folder.relativize(file).toString(), one.getValue());
    }
  }

  private static void add(CRC32 whole, String name, long checksum) {
    whole.update(name.getBytes(StandardCharsets.UTF_8));
    whole.update(ByteBuffer.allocate(Long.BYTES).putLong(checksum).flip());
  }
}
