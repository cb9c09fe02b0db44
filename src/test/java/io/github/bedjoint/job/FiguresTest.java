package io.github.bedjoint.job;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.jobfile.RandomJobs;
import io.github.bedjoint.survey.WallAreas;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Working;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Every public figure of what a job's cost is made of stands in the working of its object, as a result or as a value. */
class FiguresTest {
    private static final Range ANY = new Range(-1e30, true, 1e30, true);

    /** Figures without a formula of their own, and why. */
    private static final Map<String, String> ELSEWHERE = Map.ofEntries(
            Map.entry("MasonrySurface.jointShare", "a value of the ratio of rough faces only; smooth faces need none"),
            Map.entry("GridSurface.askedWindowM", "given, not worked out"),
            Map.entry("GridSurface.heightUncertaintyM", "given, not worked out"),
            Map.entry("GridSurface.cells", "a count of what was read"),
            Map.entry("GridSurface.missingCells", "a count of what was not read"),
            Map.entry("SpotSurface.standardUncertainty", "explained by the uncertainty that the areas show"),
            Map.entry("PanelLayout.overlap", "chosen, not worked out; the working counts it in steps"),
            Map.entry("SiteDays.setUpPaidS", "explained by the estimate it is a part of"),
            Map.entry("SiteDays.travelPaidS", "explained by the estimate it is a part of"),
            Map.entry("SiteDays.workPerDayS", "stands in the text of the days as shift less set-up less travel"));

    /** Explained by stretchWorking, which the verdict of Follow shows. */
    private static final Pattern STRETCH = Pattern.compile(".*Surface\\.(local|mean)Stretch.*");

    private static List<Explained> explained(JobCost cost) {
        List<Explained> all = new ArrayList<>(List.of(cost, cost.areas(), cost.waste(), cost.waste().filmYield(), cost.labour(), cost.labour().siteDays(), cost.price()));
        for (WallAreas wall : cost.areas().walls()) {
            all.add(wall);
            all.add(wall.wall().surface());
        }
        all.addAll(cost.layouts());
        all.addAll(cost.price().lines());
        all.addAll(cost.labour().tasks());
        cost.laminate().ifPresent(all::add);
        cost.timetable().ifPresent(all::add);
        return all;
    }

    @Test
    void figures_ofDrawnJobs_standInTheWorkingOfTheirObject() {
        Map<String, Object> missing = new TreeMap<>();
        int checked = 0;
        for (long seed = 0; seed < 20; seed++) {
            JobCost cost = JobProperties.cost(RandomJobs.rich(seed));
            if (cost.isPriced()) {
                for (Explained object : explained(cost)) {
                    checked += check(object, missing);
                }
            }
        }
        assertThat(missing).isEmpty();
        assertThat(checked).isGreaterThan(2000);
    }

    private static int check(Explained object, Map<String, Object> missing) {
        List<Double> numbers = new ArrayList<>();
        numbers(object.working(), numbers);
        int checked = 0;
        for (Method method : object.getClass().getMethods()) {
            String name = object.getClass().getSimpleName() + "." + method.getName();
            boolean isFigure = method.getParameterCount() == 0 && !Modifier.isStatic(method.getModifiers()) && method.getDeclaringClass() != Object.class
                    && Set.of(double.class, long.class, Quantity.class, Money.class).contains(method.getReturnType());
            if (isFigure && !ELSEWHERE.containsKey(name) && !STRETCH.matcher(name).matches()) {
                checked++;
                double figure = inner(object, method);
                if (numbers.stream().noneMatch(number -> Math.abs(number - figure) <= 1e-9 * Math.max(1e-3, Math.abs(figure)))) {
                    missing.put(name, figure);
                }
            }
        }
        return checked;
    }

    private static void numbers(Working working, List<Double> numbers) {
        working.result().ifPresent(result -> numbers.add(result.doubleValue()));
        working.values().forEach(value -> numbers.add(value.doubleValue()));
        working.parts().forEach(part -> numbers(part, numbers));
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // the measure is found by trying: its unit fits or does not
    private static double inner(Object object, Method method) {
        try {
            Object value = method.invoke(object);
            if (value instanceof Money money) {
                return money.getAmount().doubleValue();
            }
            if (value instanceof Quantity quantity) {
                for (Measure measure : Measure.values()) {
                    if (quantity.getUnit().isCompatible(measure.unit()) && !measure.name().startsWith("MONEY")) {
                        return Door.in(measure, method.getName(), quantity, ANY);
                    }
                }
            }
            return ((Number) value).doubleValue();
        } catch (InvocationTargetException | IllegalAccessException e) {
            throw new IllegalStateException(method.toString(), e);
        }
    }
}
