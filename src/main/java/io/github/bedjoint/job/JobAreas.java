package io.github.bedjoint.job;

import io.github.bedjoint.labour.HeatedArea;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.survey.AreaUncertainty;
import io.github.bedjoint.survey.Contact;
import io.github.bedjoint.survey.Follow;
import io.github.bedjoint.survey.WallAreas;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Area;

/** The areas of all walls of a job together: visible, measured, developed, and heated and rolled. Immutable. */
public final class JobAreas implements Explained {
    private static final Source SUM = Source.geometry("sum over walls");

    static final Formula VISIBLE = sum("visible", "Visible area of all walls", "A_v", "visible area");
    static final Formula MEASURED = sum("measured", "Measured area of all walls", "A_m", "measured area");
    static final Formula DEVELOPED = sum("developed", "Texture-adjusted area of all walls", "A_d", "developed area");
    static final Formula CONTACT = sum(
            "contact", "Adhesive contact area of film that follows the texture", "A_k", "adhesive contact area");
    static final Formula LEAST_CONTACT = sum(
            "least-contact", "Adhesive contact area at least, joints bridged taken off", "A_c", "least adhesive contact area");
    static final Formula HEATED = sum("heated", "Film heated and rolled on all walls", "A_h", "film heated and rolled");

    private static final Source GUM = Source.standard("JCGM 100:2008, 5.1.2, from memory");
    private static final Symbol SHARES = Symbol.number("v", "squared shares of the walls' uncertainties in the developed area");
    static final Formula DEVELOPED_UNCERTAINTY = Formula.of(
            "job.developed-uncertainty", "Standard uncertainty of the texture-adjusted area of all walls",
            new Symbol("u_d", Measure.AREA, "standard uncertainty"), "A_d * sqrt(v)", GUM,
            new Symbol("A_d", Measure.AREA, "developed area of all walls"), SHARES);
    static final Formula SQUARED_SHARES = Formula.of(
            "job.squared-shares", "Squared shares of the walls' uncertainties", SHARES, "sum(v_i)", GUM,
            Symbol.number("v_i", "squared share of a wall's uncertainty in the developed area"));

    private final Job job;
    private final List<WallAreas> walls;
    private final List<HeatedArea> heated;
    private final double visibleM2;
    private final double measuredM2;
    private final double developedM2;
    private final double heatedM2;

    private JobAreas(Job job, List<WallAreas> walls, List<HeatedArea> heated) {
        this.job = job;
        this.walls = walls;
        this.heated = heated;
        visibleM2 = walls.stream().mapToDouble(WallAreas::visibleM2).sum();
        measuredM2 = walls.stream().mapToDouble(WallAreas::measuredM2).sum();
        developedM2 = walls.stream().mapToDouble(WallAreas::developedM2).sum();
        heatedM2 = heated.stream().mapToDouble(HeatedArea::areaM2).sum();
    }

    static JobAreas of(Job job, List<PanelLayout> layouts) {
        List<WallAreas> walls = new ArrayList<>();
        List<HeatedArea> heated = new ArrayList<>();
        for (PanelLayout layout : layouts) {
            WallAreas areas = WallAreas.of(layout.wall(), job.deduction());
            walls.add(areas);
            heated.add(HeatedArea.of(layout.wall().surface().areaRatio(), areas.visible(), Door.area(layout.places().overlapM2())));
        }
        return new JobAreas(job, List.copyOf(walls), List.copyOf(heated));
    }

    private static Formula sum(String name, String title, String letter, String what) {
        return Formula.of(
                "job." + name, title, new Symbol(letter, Measure.AREA, what + " of all walls"), "sum(a_i)", SUM,
                new Symbol("a_i", Measure.AREA, what + " of a wall"));
    }

    /**
     * The areas of each wall.
     *
     * @return in the order of the survey
     */
    public List<WallAreas> walls() {
        return walls;
    }

    /**
     * What is seen covered, openings out.
     *
     * @return the area
     */
    public Quantity<Area> visible() {
        return Door.area(visibleM2);
    }

    /**
     * What is billed by the deduction rule.
     *
     * @return the area
     */
    public Quantity<Area> measured() {
        return Door.area(measuredM2);
    }

    /**
     * The visible area along the texture.
     *
     * @return the area
     */
    public Quantity<Area> developed() {
        return Door.area(developedM2);
    }

    /**
     * Film that is heated and rolled, overlaps twice, along the texture.
     *
     * @return the area
     */
    public Quantity<Area> heated() {
        return Door.area(heatedM2);
    }

    /**
     * What the adhesive touches where the film follows the texture: the developed area and the film turned around corners, into reveals and
     * tucked at the ground. Where film bridges it touches less: {@link #leastContact}.
     *
     * @return the area
     */
    public Quantity<Area> contact() {
        return Door.area(contactM2());
    }

    private double contactM2() {
        return walls.stream().mapToDouble(WallAreas::contactM2).sum();
    }

    /**
     * What the adhesive touches at least: the contact area less the joints that the film bridges.
     *
     * @return the area, or empty where film bridges on a measured surface, whose joints are not told from its faces
     */
    public Optional<Quantity<Area>> leastContact() {
        List<Contact> found = contacts();
        return found.size() < walls.size() ? Optional.empty() : Optional.of(Door.area(leastContactM2(found)));
    }

    private static double leastContactM2(List<Contact> contacts) {
        return contacts.stream().mapToDouble(Contact::leastM2).sum();
    }

    private List<Contact> contacts() {
        return walls.stream()
                .flatMap(wall -> Contact.of(wall, Follow.of(wall.wall().surface(), job.materials().film(), job.takeUp())).stream())
                .toList();
    }

    double visibleM2() {
        return visibleM2;
    }

    double measuredM2() {
        return measuredM2;
    }

    double developedM2() {
        return developedM2;
    }

    double heatedM2(int wall) {
        return heated.get(wall).areaM2();
    }

    double heatedM2() {
        return heatedM2;
    }

    private List<AreaUncertainty> uncertain() {
        return walls.stream().flatMap(wall -> wall.uncertainty().stream()).toList();
    }

    /**
     * Standard uncertainty of the developed area of all walls, where the survey says how uncertain it is; walls are taken as measured
     * independently of one another.
     *
     * @return the uncertainty, or empty where nothing was said of any wall
     */
    public Optional<Quantity<Area>> developedUncertainty() {
        return uncertain().isEmpty() ? Optional.empty() : Optional.of(Door.area(developedM2 * Math.sqrt(squaredShare())));
    }

    private List<Double> squaredShares() {
        return uncertain().stream().map(found -> found.developedM2() / developedM2).map(share -> share * share).toList();
    }

    private double squaredShare() {
        return squaredShares().stream().mapToDouble(Double::doubleValue).sum();
    }

    private Working uncertaintyWorking(double uM2) {
        return Working.of(DEVELOPED_UNCERTAINTY, uM2, developedM2, squaredShare())
                .because(Working.sum(SQUARED_SHARES, squaredShare(), squaredShares()));
    }

    @Override
    public Working working() {
        List<Working> parts = new ArrayList<>(List.of(
                total(VISIBLE, visibleM2, WallAreas::visibleM2).because(walls.stream().map(WallAreas::working).toArray(Working[]::new)),
                total(MEASURED, measuredM2, WallAreas::measuredM2),
                total(DEVELOPED, developedM2, WallAreas::developedM2),
                total(CONTACT, contactM2(), WallAreas::contactM2),
                Working.sum(HEATED, heatedM2, heated.stream().map(HeatedArea::areaM2).toList())
                        .because(heated.stream().map(HeatedArea::working).toArray(Working[]::new)),
                Working.group("Edges", walls.stream().map(wall -> wall.edges().working()).toList())));
        List<Contact> contacts = contacts();
        if (contacts.size() == walls.size()) {
            parts.add(Working.sum(LEAST_CONTACT, leastContactM2(contacts), contacts.stream().map(Contact::leastM2).toList())
                    .because(contacts.stream().map(Contact::working).toArray(Working[]::new)));
        }
        uncertain().forEach(found -> parts.add(found.working()));
        developedUncertainty().ifPresent(u -> parts.add(uncertaintyWorking(u.getValue().doubleValue())));
        return Working.group("Areas", parts);
    }

    private Working total(Formula formula, double figure, Function<WallAreas, Double> ofWall) {
        return Working.sum(formula, figure, walls.stream().map(ofWall).toList());
    }

    /** The three areas in one line, in metric units. */
    @Override
    public String toString() {
        return Measure.AREA.print(visibleM2, UnitStyle.METRIC) + " visible, " + Measure.AREA.print(measuredM2, UnitStyle.METRIC) + " measured, "
                + Measure.AREA.print(developedM2, UnitStyle.METRIC) + " developed";
    }
}
