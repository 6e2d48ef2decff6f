import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.LinkTree;
import com.sun.source.doctree.LiteralTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.TextTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * Copies what the Javadoc of records says of them and of their components into a properties file,
 * so that the description of the interface says the same without being written twice. Run by the
 * build as {@code java FieldMeanings.java SOURCES FILE}.
 */
final class FieldMeanings extends TreePathScanner<Void, DocTrees> {
  private final Map<String, String> meanings = new TreeMap<>();
  private final CompilationUnitTree unit;

  private FieldMeanings(CompilationUnitTree unit) {
    this.unit = unit;
  }

  public static void main(String[] arguments) throws IOException {
    List<Path> sources;
    try (Stream<Path> all = Files.walk(Path.of(arguments[0]))) {
      sources = all.filter(one -> one.toString().endsWith(".java")).sorted().toList();
    }
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    Map<String, String> meanings = new TreeMap<>();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null, files, null, List.of("-proc:none"), null,
                  files.getJavaFileObjectsFromPaths(sources));
      DocTrees docs = DocTrees.instance(task);
      for (CompilationUnitTree unit : task.parse()) {
        FieldMeanings one = new FieldMeanings(unit);
        one.scan(unit, docs);
        meanings.putAll(one.meanings);
      }
    }
    Path target = Path.of(arguments[1]);
    Files.createDirectories(target.getParent());
    Files.write(
        target,
        meanings.entrySet().stream()
            .map(one -> one.getKey() + "=" + one.getValue().replace("\\", "\\\\"))
            .toList());
  }

  @Override
  public Void visitClass(ClassTree type, DocTrees docs) {
    DocCommentTree comment = docs.getDocCommentTree(getCurrentPath());
    if (type.getKind() == Tree.Kind.RECORD && comment != null) {
      String name = nameOf(type);
      meanings.put(name, words(comment.getFullBody()));
      for (DocTree tag : comment.getBlockTags()) {
        if (tag instanceof ParamTree param && !param.isTypeParameter()) {
          meanings.put(name + "." + param.getName(), words(param.getDescription()));
        }
      }
    }
    return super.visitClass(type, docs);
  }

  /** The canonical name: package, enclosing types, type. */
  private String nameOf(ClassTree type) {
    String name = type.getSimpleName().toString();
    for (var path = getCurrentPath().getParentPath(); path != null; path = path.getParentPath()) {
      if (path.getLeaf() instanceof ClassTree enclosing) {
        name = enclosing.getSimpleName() + "." + name;
      }
    }
    return unit.getPackageName() + "." + name;
  }

  private static String words(List<? extends DocTree> parts) {
    return parts.stream()
        .map(FieldMeanings::word)
        .collect(Collectors.joining())
        .replaceAll("\\s+", " ")
        .strip();
  }

  private static String word(DocTree part) {
    if (part instanceof TextTree text) {
      return text.getBody();
    }
    if (part instanceof LiteralTree literal) {
      return literal.getBody().getBody();
    }
    if (part instanceof LinkTree link) {
      return link.getLabel().isEmpty()
          ? link.getReference().getSignature()
          : words(link.getLabel());
    }
    return part.getKind() == DocTree.Kind.START_ELEMENT ? " " : "";
  }
}
