package io.github.bedjoint.build;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The fenced blocks of a Markdown page. */
final class Fences {

    private static final String FENCE = "```";

    private Fences() {
    }

    /** One block: its info string ("java", "text", ...), its text, the line it opens on, and whether only blank lines part it from the block before. */
    record Block(String info, String text, int line, boolean followsBlock) {
    }

    /** All blocks in order. An indented fence (inside a list) loses the fence's indent; one left open is refused. */
    static List<Block> of(String markdown) {
        List<Block> blocks = new ArrayList<>();
        List<String> lines = markdown.lines().toList();
        boolean followsBlock = false;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (!line.strip().startsWith(FENCE)) {
                followsBlock &= line.isBlank();
                continue;
            }
            int indent = line.indexOf(FENCE);
            int open = i;
            StringBuilder text = new StringBuilder();
            for (i++; i < lines.size() && !lines.get(i).strip().equals(FENCE); i++) {
                text.append(unindented(lines.get(i), indent)).append('\n');
            }
            if (i == lines.size()) {
                throw new IllegalArgumentException("the block opened on line " + (open + 1) + " is never closed");
            }
            blocks.add(new Block(line.strip().substring(FENCE.length()).strip(), text.toString(), open + 1, followsBlock));
            followsBlock = true;
        }
        return blocks;
    }

    private static String unindented(String line, int indent) {
        int spaces = 0;
        while (spaces < indent && spaces < line.length() && line.charAt(spaces) == ' ') {
            spaces++;
        }
        return line.substring(spaces);
    }

    /** A Java block and what it must print; {@code expected} is null where no text block follows it. */
    record Example(Block java, @Nullable String expected) {
    }

    /** Each Java block with the text block after it. An info string that only begins with "java" is refused: no way round the check. */
    static List<Example> examples(String markdown) {
        List<Block> blocks = of(markdown);
        List<Example> examples = new ArrayList<>();
        for (int i = 0; i < blocks.size(); i++) {
            Block block = blocks.get(i);
            if (block.info().equals("java")) {
                Block next = i + 1 < blocks.size() ? blocks.get(i + 1) : null;
                boolean paired = next != null && next.info().equals("text") && next.followsBlock();
                examples.add(new Example(block, paired ? next.text() : null));
            } else if (block.info().startsWith("java") && !block.info().equals("javascript")) {
                throw new IllegalArgumentException("line " + block.line() + ": a Java block is run, so its info string is "
                        + "\"java\" and not \"" + block.info() + "\"");
            }
        }
        return examples;
    }
}
