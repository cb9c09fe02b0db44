package io.github.bedjoint.drawing;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.price.PriceBuildUp;
import io.github.bedjoint.risk.Outcome;
import io.github.bedjoint.risk.RiskResult;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.schedule.Timetable;
import io.github.bedjoint.texture.Surface;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.waste.WasteAccount;
import io.github.bedjoint.working.Markup;
import java.util.List;
import java.util.function.Consumer;

/**
 * A drawing in SVG: title and description for those who cannot see it, and shapes with words for those who can.
 *
 * <p>The same input gives the same bytes. Nothing is told by colour alone; it reads in black and white. It needs no font, no
 * script and no other file. Immutable.
 */
public final class Drawing {
    private final String title;
    private final String description;
    private final double width;
    private final double height;
    private final Consumer<Svg> shapes;

    Drawing(String title, String description, double width, double height, Consumer<Svg> shapes) {
        this.title = title;
        this.description = description;
        this.width = width;
        this.height = height;
        this.shapes = shapes;
    }

    /**
     * A wall from the front in true scale: openings, panels numbered in the order of application with their cut sizes, overlaps and
     * the way their edges face.
     *
     * @param layout a wall divided into panels; one that cannot be divided is drawn bare
     * @param style  the reader's units
     * @return the drawing
     */
    public static Drawing wall(PanelLayout layout, UnitStyle style) {
        return new WallSketch(layout, style).drawing();
    }

    /**
     * The rolls of a plan with lead, pieces in cutting order, gaps, what is left, and tail; lengths in true scale.
     *
     * @param title       what the rolls are, such as the film's name
     * @param plan        a roll plan
     * @param marginSteps margin along each edge of the roll, beside the width of the stock, in steps, 0 or more
     * @param style       the reader's units
     * @return the drawing; without a plan it holds only its title
     */
    public static Drawing rolls(String title, RollPlan plan, long marginSteps, UnitStyle style) {
        return new RollSketch(title, plan, marginSteps, style).drawing();
    }

    /**
     * A joint in section with the film over it, and the stretch it asks for beside what the film bears.
     *
     * @param surface the wall's texture
     * @param film    the film
     * @param style   the reader's units
     * @return the drawing; for a surface without joints only the stretches
     */
    public static Drawing joint(Surface surface, Film film, UnitStyle style) {
        return joint(surface, film, TakeUp.NONE, style);
    }

    /**
     * A joint in section with a film over it of which some is fed in, and the stretch that is left beside what the film bears.
     *
     * @param surface the wall's texture
     * @param film    the film
     * @param takeUp  the shares fed in
     * @param style   the reader's units
     * @return the drawing; for a surface without joints only the stretches
     */
    public static Drawing joint(Surface surface, Film film, TakeUp takeUp, UnitStyle style) {
        return new JointSketch(surface, film, takeUp, style).drawing();
    }

    /**
     * The dates of a job as bars over its days: work, waits, float and hand-over.
     *
     * @param dates a timetable that is possible
     * @return the drawing
     * @throws IllegalArgumentException if the timetable has no dates
     */
    public static Drawing dates(Timetable dates) {
        if (!dates.isPossible()) {
            throw new IllegalArgumentException("there are no dates to draw: " + String.join(" ", dates.reasons()));
        }
        return new DateSketch(dates).drawing();
    }

    /**
     * Where the film opened ends, a bar for each part.
     *
     * @param waste the waste account
     * @param style the reader's units
     * @return the drawing
     */
    public static Drawing waste(WasteAccount waste, UnitStyle style) {
        return BarSketch.waste(waste, style);
    }

    /**
     * What a price is made of, a bar for each kind of cost and each step up to the total.
     *
     * @param price the price
     * @return the drawing
     */
    public static Drawing cost(PriceBuildUp price) {
        return BarSketch.cost(price);
    }

    /**
     * How one figure of a job is spread over simulated jobs, with P50, P80 and P95.
     *
     * @param risk    the simulated jobs
     * @param outcome which figure
     * @param style   the reader's units
     * @return the drawing
     * @throws IllegalStateException if no simulated job has the figure
     */
    public static Drawing spread(RiskResult risk, Outcome outcome, UnitStyle style) {
        return new SpreadSketch(risk, outcome, style).drawing();
    }

    /**
     * What is drawn.
     *
     * @return a few words
     */
    public String title() {
        return title;
    }

    /**
     * What the drawing shows, in words, for a reader who does not see it.
     *
     * @return a few sentences
     */
    public String description() {
        return description;
    }

    /**
     * Writes the drawing into a page.
     *
     * @param out the page
     */
    public void write(Markup out) {
        String w = Svg.number(Math.ceil(width));
        String h = Svg.number(Math.ceil(height));
        out.open("svg", "xmlns", "http://www.w3.org/2000/svg", "width", w, "height", h, "viewBox", "0 0 " + w + " " + h,
                "role", "img", "font-family", "sans-serif");
        out.element("title", title).element("desc", description);
        shapes.accept(new Svg(out));
        out.close();
    }

    /**
     * The drawing as a file.
     *
     * @return one {@code svg} element
     */
    public String svg() {
        Markup out = new Markup();
        write(out);
        return out.toString();
    }

    /** Title and description. */
    @Override
    public String toString() {
        return title + ": " + description;
    }

    double width() {
        return width;
    }

    static String list(List<String> sentences) {
        return String.join(" ", sentences);
    }
}
