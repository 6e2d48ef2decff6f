package org.wetside.acceptance.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Finds what a source file offers to others without a word about it. */
final class PublicMembers {
  private static final Pattern TYPE =
      Pattern.compile(
          "public (final |sealed |abstract |non-sealed )*(class|record|interface|enum|@interface) .*");
  private static final Pattern MEMBER = Pattern.compile("  public (?!static final ).*");

  /** The body of a record's constructor, which repeats nothing of its documented components. */
  private static final Pattern COMPACT = Pattern.compile("  public \\w+ \\{");

  private PublicMembers() {}

  static List<String> undocumented(String source) {
    List<String> lines = source.lines().toList();
    boolean open = lines.stream().anyMatch(line -> TYPE.matcher(line).matches());
    List<String> found = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      boolean offered =
          TYPE.matcher(line).matches()
              || (open && MEMBER.matcher(line).matches() && !COMPACT.matcher(line).matches());
      if (offered && !said(lines, i)) {
        found.add(line.strip());
      }
    }
    return found;
  }

  private static boolean said(List<String> lines, int at) {
    int before = at - 1;
    while (before >= 0 && lines.get(before).strip().matches("@.*|\".*|\\)")) {
      if (lines.get(before).strip().equals("@Override")) {
        return true;
      }
      before--;
    }
    return before >= 0 && lines.get(before).strip().endsWith("*/");
  }
}
