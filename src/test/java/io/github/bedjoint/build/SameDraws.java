package io.github.bedjoint.build;

import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Lets every property draw the same values in every run, so that a commit passes or fails and never does both. New ground is looked for on purpose:
 * {@code -Dbedjoint.seed=random} draws anew, {@code -Dbedjoint.seed=7} draws another fixed set. A seed written at a property stays.
 */
public final class SameDraws implements AroundPropertyHook {
    private static final String SEED = System.getProperty("bedjoint.seed", "1");

    @Override
    public PropagationMode propagateTo() {
        return PropagationMode.ALL_DESCENDANTS;
    }

    @Override
    public PropertyExecutionResult aroundProperty(PropertyLifecycleContext property, PropertyExecutor executor) throws Throwable {
        if (!SEED.equals("random") && property.attributes().seed().isEmpty()) {
            // Properties of one seed must not all draw the same walls.
            property.attributes().setSeed(Long.toString((SEED + property.extendedLabel()).hashCode()));
        }
        return executor.execute();
    }
}
