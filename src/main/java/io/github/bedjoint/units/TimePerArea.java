package io.github.bedjoint.units;

import javax.measure.Quantity;

/** A pace by surface: time per area, inner unit second per square metre. */
public interface TimePerArea extends Quantity<TimePerArea> {}
