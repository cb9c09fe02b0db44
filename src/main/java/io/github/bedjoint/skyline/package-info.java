/** Floor 7: places panels side by side on rolls along the outline of those already placed. Not exported. */
@NullMarked
package io.github.bedjoint.skyline;

import org.jspecify.annotations.NullMarked;
