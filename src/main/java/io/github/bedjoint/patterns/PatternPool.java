package io.github.bedjoint.patterns;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** All patterns met so far, each once, in the order they were found. */
public final class PatternPool {

    private record Key(int type, List<Integer> counts) {}

    private final List<Pattern> patterns = new ArrayList<>();
    private final Set<Key> known = new HashSet<>();

    void add(int type, int[] counts) {
        if (known.add(new Key(type, Arrays.stream(counts).boxed().toList()))) {
            patterns.add(new Pattern(type, counts.clone()));
        }
    }

    List<Pattern> patterns() {
        return patterns;
    }
}
