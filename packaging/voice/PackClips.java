import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.wetside.reference.SpokenWords;

/** Speaks every clip of a language, trims it, brings all to one loudness and packs them in one file. */
final class PackClips {
  private static final int RATE = 22_050;
  private static final String WORDS_PER_MINUTE = "165";

  /** Quieter than this at the edges is silence. */
  private static final double SILENCE = 0.008;

  private static final double LOUDNESS = 0.11;
  private static final double PEAK = 0.7;
  private static final int BETWEEN_MS = 80;

  public static void main(String[] args) throws Exception {
    String language = args[0];
    String voice = args[1];
    List<String> index = new ArrayList<>(List.of(
        "# Where each clip lies in " + language + ".opus; written by packaging/voice/render.", "clip,from_ms,length_ms"));
    List<double[]> clips = new ArrayList<>();
    int at = gap();
    for (Map.Entry<String, String> one : SpokenWords.in(language).toBeSpoken().entrySet()) {
      double[] clip = evened(trimmed(spoken(voice, one.getValue())));
      clips.add(clip);
      index.add(one.getKey() + "," + millis(at) + "," + (millis(at + clip.length) - millis(at)));
      at += clip.length + gap();
    }
    write(clips, at, new File(args[2]));
    Files.write(Path.of(args[3]), index);
    System.out.printf("%d clips, %.1f s%n", clips.size(), at / (double) RATE);
  }

  private static double[] spoken(String voice, String text) throws Exception {
    Path wav = Files.createTempFile("clip", ".wav");
    // A lone capital is read as a letter's name; "a" alone would be read as the article.
    String said = text.length() == 1 && Character.isLetter(text.charAt(0)) ? "\"" + text + "\"." : text;
    Process process = new ProcessBuilder("espeak-ng", "-v", voice, "-s", WORDS_PER_MINUTE, "-w", wav.toString(), said).inheritIO().start();
    if (process.waitFor() != 0) {
      throw new IOException("espeak-ng could not say " + text);
    }
    try (AudioInputStream in = AudioSystem.getAudioInputStream(wav.toFile())) {
      AudioFormat format = in.getFormat();
      if (format.getSampleRate() != RATE || format.getChannels() != 1 || format.getSampleSizeInBits() != 16) {
        throw new IOException("expected 22,050 Hz, mono, 16 bit: " + format);
      }
      byte[] bytes = in.readAllBytes();
      double[] samples = new double[bytes.length / 2];
      for (int i = 0; i < samples.length; i++) {
        samples[i] = (short) ((bytes[2 * i] & 0xff) | (bytes[2 * i + 1] << 8)) / 32_768.0;
      }
      return samples;
    } finally {
      Files.delete(wav);
    }
  }

  private static double[] trimmed(double[] samples) {
    int from = 0;
    int to = samples.length;
    while (from < to && Math.abs(samples[from]) < SILENCE) {
      from++;
    }
    while (to > from && Math.abs(samples[to - 1]) < SILENCE) {
      to--;
    }
    return java.util.Arrays.copyOfRange(samples, Math.max(0, from - RATE / 200), Math.min(samples.length, to + RATE / 100));
  }

  private static double[] evened(double[] samples) {
    double sum = 0;
    double peak = 1e-9;
    for (double one : samples) {
      sum += one * one;
      peak = Math.max(peak, Math.abs(one));
    }
    double gain = Math.min(LOUDNESS / Math.sqrt(sum / samples.length), PEAK / peak);
    return java.util.Arrays.stream(samples).map(one -> one * gain).toArray();
  }

  private static void write(List<double[]> clips, int length, File wav) throws IOException {
    byte[] bytes = new byte[2 * length];
    int at = gap();
    for (double[] clip : clips) {
      for (double one : clip) {
        short value = (short) Math.round(one * 32_767);
        bytes[2 * at] = (byte) value;
        bytes[2 * at + 1] = (byte) (value >> 8);
        at++;
      }
      at += gap();
    }
    AudioFormat format = new AudioFormat(RATE, 16, 1, true, false);
    AudioSystem.write(new AudioInputStream(new ByteArrayInputStream(bytes), format, length), AudioFileFormat.Type.WAVE, wav);
  }

  private static int gap() {
    return RATE * BETWEEN_MS / 1000;
  }

  private static long millis(int samples) {
    return Math.round(samples * 1000.0 / RATE);
  }
}
