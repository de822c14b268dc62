package fifthform.monitor.house;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** What sources say: the strings that a user might read, and the texts that are named and said, read by the compiler's parser. */
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

    /** A text named but not said on the spot: handed on, or kept until it is said. */
    record Kept(Path file, long line, String keys, String key) {
        @Override
        public String toString() {
            return file.getFileName() + ":" + line + " " + keys + "." + key;
        }
    }

    final List<Literal> literals = new ArrayList<>();
    final List<Said> said = new ArrayList<>();
    final List<Kept> kept = new ArrayList<>();

    /** Files that find a text by the name of a constant of their own, with its keys. */
    final Map<Path, String> byName = new HashMap<>();

    /** With how many parts a room says texts that it keeps. */
    final Map<String, Set<Integer>> partsOfKept = new HashMap<>();

    private final Set<String> enums;

    private SourceWords(Set<String> enums) {
        this.enums = enums;
    }

    /** @param enums the names of all enums of texts */
    static SourceWords of(List<Path> files, Set<String> enums) {
        SourceWords words = new SourceWords(enums);
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
        private boolean speaksToProgrammers;

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
            boolean outside = speaksToProgrammers;
            speaksToProgrammers |= made.endsWith("Exception") || made.endsWith("Error");
            super.visitNewClass(node, unused);
            speaksToProgrammers = outside;
            return null;
        }

        @Override
        public Void visitMethodInvocation(MethodInvocationTree node, Void unused) {
            if (!(node.getMethodSelect() instanceof MemberSelectTree call))
                return super.visitMethodInvocation(node, unused);
            int parts = node.getArguments().size();
            if (call.getIdentifier().contentEquals("valueOf")
                    && enums.contains(call.getExpression().toString()))
                byName.put(file, call.getExpression().toString());
            if (call.getIdentifier().contentEquals("say")) {
                List<MemberSelectTree> texts = texts(call.getExpression());
                texts.forEach(text -> said.add(new Said(file, line(node), keys(text), key(text), parts)));
                if (texts.isEmpty())
                    partsOfKept
                            .computeIfAbsent(House.room(file), room -> new HashSet<>())
                            .add(parts);
                else return scan(node.getArguments(), unused);
            }
            return super.visitMethodInvocation(node, unused);
        }

        @Override
        public Void visitMemberSelect(MemberSelectTree node, Void unused) {
            if (isText(node)) kept.add(new Kept(file, line(node), keys(node), key(node)));
            return super.visitMemberSelect(node, unused);
        }

        /** The texts that an expression is one of; none where it is a variable. */
        private List<MemberSelectTree> texts(ExpressionTree expression) {
            if (expression instanceof ParenthesizedTree inner) return texts(inner.getExpression());
            if (expression instanceof ConditionalExpressionTree either) {
                List<MemberSelectTree> both = new ArrayList<>(texts(either.getTrueExpression()));
                both.addAll(texts(either.getFalseExpression()));
                return both;
            }
            return expression instanceof MemberSelectTree select && isText(select) ? List.of(select) : List.of();
        }

        private boolean isText(MemberSelectTree select) {
            return enums.contains(keys(select)) && key(select).matches("[A-Z][A-Z0-9_]*");
        }

        private static String keys(MemberSelectTree text) {
            return text.getExpression().toString();
        }

        private static String key(MemberSelectTree text) {
            return text.getIdentifier().toString();
        }

        @Override
        public Void visitLiteral(LiteralTree node, Void unused) {
            if (node.getValue() instanceof String words && !speaksToProgrammers)
                literals.add(new Literal(file, line(node), words));
            return null;
        }

        private long line(Tree node) {
            long at = Trees.instance(task).getSourcePositions().getStartPosition(unit, node);
            return unit.getLineMap().getLineNumber(at);
        }
    }
}
