package evenwater.firmware;

import com.github.javaparser.ast.Node;

/** Says what in the kernel's source is outside the part of Java that can be translated. */
final class UnsupportedJavaException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    UnsupportedJavaException(String owner, Node node, String what) {
        super(owner + node.getRange().map(range -> ", line " + range.begin.line).orElse("") + ": " + what
                + " cannot be translated: " + node);
    }
}
