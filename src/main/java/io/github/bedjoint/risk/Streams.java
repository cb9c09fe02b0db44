package io.github.bedjoint.risk;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Random numbers by count: each simulated job has, for each name, a generator of its own that follows from seed, name and number alone. So
 * neither threads nor the order of inputs matter, and an input that is added leaves the draws of the others as they are.
 */
record Streams(long begin) {

    static Streams of(long seed, String name) {
        long hash = 0xcbf29ce484222325L;
        for (int i = 0; i < name.length(); i++) {
            // FNV-1a, 64 bits
            hash = (hash ^ name.charAt(i)) * 0x100000001b3L;
        }
        return new Streams(RandomSource.SPLIT_MIX_64.create(seed ^ hash).nextLong());
    }

    UniformRandomProvider of(int job) {
        return RandomSource.SPLIT_MIX_64.create(begin + job);
    }
}
