package io.github.bedjoint.build;

import io.github.bedjoint.film.Coating;
import io.github.bedjoint.film.Film;
import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.JobAreas;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.job.Materials;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.layout.Panel;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.layout.Picture;
import io.github.bedjoint.layout.PrintList;
import io.github.bedjoint.price.PriceRules;
import io.github.bedjoint.survey.Contact;
import io.github.bedjoint.survey.Edge;
import io.github.bedjoint.survey.Follow;
import io.github.bedjoint.survey.LengthTolerance;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Point;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Survey;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.texture.AdjustedSurface;
import io.github.bedjoint.texture.Bond;
import io.github.bedjoint.texture.ContourProfile;
import io.github.bedjoint.texture.Diagonal;
import io.github.bedjoint.texture.FlatSurface;
import io.github.bedjoint.texture.GaugeTolerance;
import io.github.bedjoint.texture.GridSurface;
import io.github.bedjoint.texture.HeightGrid;
import io.github.bedjoint.texture.HeightStatistics;
import io.github.bedjoint.texture.JointProfile;
import io.github.bedjoint.texture.MasonryCounts;
import io.github.bedjoint.texture.MasonrySurface;
import io.github.bedjoint.texture.MasonryTolerance;
import io.github.bedjoint.texture.ProfileSurface;
import io.github.bedjoint.texture.RatioUncertainty;
import io.github.bedjoint.texture.SpotSurface;
import io.github.bedjoint.texture.Surface;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.waste.RollCoverage;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Working;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** One plain example of each result about surfaces, film, panels and rolls, with round numbers. */
final class SurfaceExamples {
    private static final JointProfile RAKED = JointProfile.raked(mm(5));
    private static final MasonrySurface BRICK = brick(RAKED);
    private static final Film FILM = Film.of("film", Read.length("1 m"));

    private SurfaceExamples() {}

    private static Quantity<Length> mm(double length) {
        return Door.of(length, ShopUnits.MILLIMETRE);
    }

    private static MasonrySurface brick(JointProfile profile) {
        return MasonrySurface.of(mm(215), mm(65), mm(10), mm(10), profile);
    }

    private static ContourProfile contour(double... places) {
        return ContourProfile.of(places, new double[] {0, 0, -5, -5, 0}, ShopUnits.MILLIMETRE);
    }

    static Stream<Explained> results() throws IOException {
        double[][] heights = {{0, 1, 0}, {0, 1, 0}, {0, 0, 2}};
        HeightGrid grid = HeightGrid.of(heights, mm(10), mm(10), ShopUnits.MILLIMETRE);
        PanelLayout gable = LayoutPlanner.withDefaults().plan(
                Wall.polygon("gable", List.of(Point.of(mm(0), mm(0)), Point.of(mm(2900), mm(0)), Point.of(mm(2900), mm(1000)), Point.of(mm(0), mm(3000)))), FILM);
        PanelLayout fed = LayoutPlanner.withDefaults().withTakeUp(new TakeUp(0.5, 0.5)).plan(
                Wall.rectangle("wall", mm(3940), mm(2000)).withSurface(BRICK).withEdge(Side.TOP, Edge.of(Edge.Kind.FREE, mm(30))).withEdge(Side.LEFT, Edge.of(Edge.Kind.FREE, mm(30))), FILM);
        return Stream.of(
                contour(0, 65, 65, 75, 75),
                HeightStatistics.of(grid),
                MasonryCounts.of(BRICK, Read.area("10 m2")),
                MasonryCounts.of(BRICK.withBond(Bond.FLEMISH), Read.area("10 m2")),
                MasonryCounts.of(BRICK.withBond(Bond.ENGLISH), Read.area("10 m2")),
                uncertainty(),
                BRICK.joints().orElseThrow(),
                spots().joints().orElseThrow(),
                ProfileSurface.up(contour(0, 65, 65, 75, 75)).withTolerance(GaugeTolerance.none().withHeight(mm(0.1))).uncertainty().orElseThrow(),
                GridSurface.of(grid, Diagonal.FALLING).withHeightUncertainty(mm(0.1)).uncertainty().orElseThrow(),
                measured().walls().get(0).uncertainty().orElseThrow(),
                Contact.of(measured().walls().get(0), Follow.of(BRICK, FILM)).orElseThrow(),
                Follow.of(BRICK, FILM.withUsableStretch(2.2), new TakeUp(0.5, 0)),
                gable.panels().get(0),
                gable,
                fed.panels().get(0),
                fed,
                PrintList.withSpares(gable, Picture.over(gable.wall()), 1),
                PrintList.withReprintRate(gable, Picture.over(gable.wall()), 0.05),
                RollCoverage.of(FILM, Read.length("25 m"), mm(20), mm(2400), mm(2450)));
    }

    private static SpotSurface spots() {
        return SpotSurface.of(brick(JointProfile.flush()), JointProfile.Kind.RAKED, List.of(mm(4), mm(5), mm(6)));
    }

    /** A wall with a window, whose lengths are not sure. */
    private static JobAreas measured() {
        Wall wall = Wall.rectangle("wall", mm(4000), mm(2500)).withSurface(BRICK)
                .withOpening(Opening.of(Opening.Kind.WINDOW, mm(1000), mm(1000), mm(1000), mm(1000)))
                .withTolerance(LengthTolerance.none().withWall(mm(5)).withOpening(mm(3)));
        Materials film = Materials.of(FILM, List.of(RollOffer.of("25 m", Read.length("25 m"), Money.parse("EUR 100"))));
        return JobCost.of(Job.builder("Example", Survey.of(wall), film, PriceRules.in(CurrencyUnit.EUR)).build()).areas();
    }

    private static RatioUncertainty uncertainty() {
        return MasonryTolerance.none().withDepth(mm(0.2)).of(BRICK);
    }

    static List<Surface> surfaces() throws IOException {
        double[][] heights = {{0, 1, 0}, {0, 1, 0}, {0, 0, 2}};
        JointProfile vee = JointProfile.vee(Door.of(90, JointProfile.DEGREE));
        return List.of(
                BRICK,
                FlatSurface.flat(),
                AdjustedSurface.of(BRICK, 1.2),
                BRICK.withHeads(JointProfile.raked(mm(2))),
                BRICK.withHeads(JointProfile.concave(mm(3))),
                brick(vee).withHeads(JointProfile.concave(mm(3))),
                brick(vee),
                brick(vee).withHeads(JointProfile.flush()),
                brick(JointProfile.flush()).withHeads(vee),
                brick(JointProfile.halfRound()),
                brick(JointProfile.struck(mm(5))),
                brick(JointProfile.flush()).withFaceRatio(1.2),
                BRICK.withFaceRatio(1.2),
                BRICK.withBond(Bond.FLEMISH),
                BRICK.withBond(Bond.ENGLISH),
                ProfileSurface.of(contour(0, 65, 65, 75, 75), contour(0, 215, 215, 225, 225)),
                ProfileSurface.along(contour(0, 215, 215, 225, 225)),
                spots(),
                GridSurface.of(HeightGrid.of(heights, mm(10), mm(10), ShopUnits.MILLIMETRE), Diagonal.FALLING));
    }

    static Stream<Working> workings() throws IOException {
        Stream<Working> surfaces = surfaces().stream().flatMap(surface -> Stream.of(surface.working(), surface.stretchWorking()));
        Stream<Working> others = Stream.of(
                measured().working(),
                new TakeUp(0.5, 0.5).working(BRICK, 1.2, 2.4),
                new TakeUp(0.5, 0.5).leftWorking(BRICK),
                uncertainty().developedWorking(Read.area("40 m2"), Read.area("0.5 m2")),
                Coating.of("Sample primer", Read.volumePerArea("80 mL/m2")).working(23));
        return Stream.of(results().map(Explained::working), surfaces, others).flatMap(all -> all);
    }

    static Panel panel() throws IOException {
        return results().filter(Panel.class::isInstance).map(Panel.class::cast).findFirst().orElseThrow();
    }
}
