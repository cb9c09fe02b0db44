package io.github.bedjoint.units;

import javax.measure.Quantity;

/** A basis weight: mass per area, inner unit kilogram per square metre. */
public interface MassPerArea extends Quantity<MassPerArea> {}
