package io.github.bedjoint.labour;

/** Where a task is done. */
public enum Stage {
    /** In the shop, before the crew leaves. */
    PRODUCTION,
    /** At the wall. */
    SITE
}
