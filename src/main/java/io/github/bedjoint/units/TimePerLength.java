package io.github.bedjoint.units;

import javax.measure.Quantity;

/** A pace by length: time per length, inner unit second per metre. */
public interface TimePerLength extends Quantity<TimePerLength> {}
