package fifthform.monitor.house;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** What sources say: the strings that a user might read, and the texts that are said, read by the compiler's parser. */
final class SourceWords {
    /** A string in the code that is no annotation's and no exception's, which speak to programmers. */
    record Literal(Path file, long line, String words) {
        @Override
        public String toString() {
            return file.getFileName() + ":" + line + " \"" + words + "\"";
        }
    }

    /** A text said with so many parts. */
    record Said(Path file, long line, String keys, String key, int parts) {
        @Override
        public String toString() {
            return file.getFileName() + ":" + line + " " + keys + "." + key + " with " + parts;
        }
    }

    final List<Literal> literals = new ArrayList<>();
    final List<Said> said = new ArrayList<>();

    private SourceWords() {}

    static SourceWords of(List<Path> files) {
        SourceWords words = new SourceWords();
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask)
                    compiler.getTask(null, manager, null, null, null, manager.getJavaFileObjectsFromPaths(files));
            for (CompilationUnitTree unit : task.parse()) words.new Reader(task, unit).scan(unit, null);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return words;
    }

    private final class Reader extends TreeScanner<Void, Void> {
        private final JavacTask task;
        private final CompilationUnitTree unit;
        private final Path file;

        Reader(JavacTask task, CompilationUnitTree unit) {
            this.task = task;
            this.unit = unit;
            this.file = Path.of(unit.getSourceFile().toUri());
        }

        @Override
        public Void visitAnnotation(AnnotationTree node, Void unused) {
            return null;
        }

        @Override
        public Void visitNewClass(NewClassTree node, Void unused) {
            String made = node.getIdentifier().toString();
            return made.endsWith("Exception") || made.endsWith("Error") ? null : super.visitNewClass(node, unused);
        }

        @Override
        public Void visitMethodInvocation(MethodInvocationTree node, Void unused) {
            if (node.getMethodSelect() instanceof MemberSelectTree call
                    && call.getIdentifier().contentEquals("say")
                    && call.getExpression() instanceof MemberSelectTree text
                    && text.getExpression().toString().endsWith("Text"))
                said.add(new Said(
                        file,
                        line(node),
                        text.getExpression().toString(),
                        text.getIdentifier().toString(),
                        node.getArguments().size()));
            return super.visitMethodInvocation(node, unused);
        }

        @Override
        public Void visitLiteral(LiteralTree node, Void unused) {
            if (node.getValue() instanceof String words) literals.add(new Literal(file, line(node), words));
            return null;
        }

        private long line(Tree node) {
            long at = Trees.instance(task).getSourcePositions().getStartPosition(unit, node);
            return unit.getLineMap().getLineNumber(at);
        }
    }
}
