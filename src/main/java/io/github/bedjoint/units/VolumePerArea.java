package io.github.bedjoint.units;

import javax.measure.Quantity;

/** A spread or ink consumption: volume per area, inner unit cubic metre per square metre. */
public interface VolumePerArea extends Quantity<VolumePerArea> {}
