package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Time;

/** How long a heat source takes on a panel, and which pace per heated area that is. Immutable. */
public final class HeatRollTime implements Explained {
    private static final Source SOURCE = Source.geometry("path of the heat source over its speed");
    private static final Symbol TIME = new Symbol("t_h", Measure.TIME, "time of the heat source on a panel");
    private static final Symbol PACE = new Symbol("p_h", Measure.TIME_PER_AREA, "pace per heated area along the texture");
    private static final Symbol STRIPS = Symbol.number("m", "strips");
    private static final Symbol LENGTH = new Symbol("L", Measure.LENGTH, "panel length");
    private static final Symbol WIDTH = new Symbol("w", Measure.LENGTH, "panel width");
    private static final Symbol PASSES = Symbol.number("z", "passes over each strip");
    private static final Symbol SPEED = new Symbol("v", Measure.SPEED, "speed of the heat source");
    private static final Symbol RATIO = Symbol.number("r", "developed area ratio");

    static final Formula PROJECTED =
            Formula.of("labour.heat-time-projected", "Time on a panel, speed on the plane", TIME, "m * L * z / v", SOURCE, STRIPS, LENGTH, PASSES, SPEED);
    static final Formula DEVELOPED = Formula.of(
            "labour.heat-time-developed", "Time on a panel, speed along the texture", TIME, "m * L * r * z / v", SOURCE, STRIPS, LENGTH, RATIO, PASSES, SPEED);
    static final Formula PACE_OF_TIME = Formula.of(
            "labour.heat-pace", "Pace per heated area", PACE, "t_h / (r * w * L)", SOURCE, TIME, RATIO, WIDTH, LENGTH);

    private final HeatRolling source;
    private final long widthSteps;
    private final double lengthM;
    private final double ratio;
    private final long strips;
    private final double timeS;
    private final double paceSpm2;

    HeatRollTime(HeatRolling source, long widthSteps, double lengthM, double ratio) {
        this.source = source;
        this.widthSteps = widthSteps;
        this.lengthM = lengthM;
        this.ratio = ratio;
        this.strips = source.strips(widthSteps);
        double path = source.along() == HeatRolling.Speeds.PROJECTED ? strips * lengthM : strips * lengthM * ratio;
        this.timeS = path * source.passes() / source.speedMps();
        this.paceSpm2 = timeS / (ratio * Steps.toM(widthSteps) * lengthM);
    }

    /**
     * How many strips lie side by side on the panel.
     *
     * @return whole strips
     */
    public long strips() {
        return strips;
    }

    /**
     * The time on the panel.
     *
     * @return elapsed time of the heat source
     */
    public Quantity<Time> time() {
        return Door.time(timeS);
    }

    /**
     * {@link #time()} as a plain number.
     *
     * @return seconds
     */
    public double timeS() {
        return timeS;
    }

    /**
     * The time as a pace for {@link Driver#HEATED_AREA}; the length of the panel cancels out.
     *
     * @return seconds per square metre along the texture
     */
    public Pace pace() {
        return new Pace(Measure.TIME_PER_AREA, paceSpm2);
    }

    @Override
    public Working working() {
        Working count = Working.of(HeatRolling.STRIPS, strips, widthSteps, source.heatedSteps(), source.overlapSteps());
        Working time = source.along() == HeatRolling.Speeds.PROJECTED
                ? Working.of(PROJECTED, timeS, strips, lengthM, source.passes(), source.speedMps())
                : Working.of(DEVELOPED, timeS, strips, lengthM, ratio, source.passes(), source.speedMps());
        Working pace = Working.of(PACE_OF_TIME, paceSpm2, timeS, ratio, Steps.toM(widthSteps), lengthM);
        return Working.group("Heat-rolling from speed", List.of(pace.because(time.because(count))));
    }

    /** The time and the strips it is made of. */
    @Override
    public String toString() {
        return Measure.TIME.print(timeS, UnitStyle.METRIC) + ": " + Print.count(strips, "strip") + " of "
                + Measure.LENGTH.print(lengthM, UnitStyle.METRIC) + ", " + Print.count(source.passes(), "pass", "passes");
    }
}
