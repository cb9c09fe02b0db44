package io.github.bedjoint.job;

import io.github.bedjoint.units.ShopUnits;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** The sums of docs/jobs/brick-front.md for panels and rolls that are given, once in plain numbers and once in quantities all the way; dates left out. */
final class BrickFrontSums {
    private static final double[] PER_AREA = {2, 1};
    private static final double[] PER_PIECE = {20, 3 * 6, 12 * 6, 15, 15 * 3, 10};

    private BrickFrontSums() {}

    /** In metres, minutes and euros. */
    static double plain(double width, double height, double ratio) {
        double visible = width * height - 1.0 * 2.1 - 1.4 * 1.2 - 0.2 * 0.1;
        double seams = 5 * height - 2.1 - 1.2;
        double heated = ratio * (visible + seams * 0.02);
        double printed = (5 * 1.36 + 0.56) * (height + 0.05);
        double ground = width - 1.0;

        double shop = 45 * 1.15 + 6 * (height + 0.05 + 0.00667) * 5 * 0.15 + 19.34 + 36 * 1.15 + 12 * 1.15;
        double site = heated * 10 + seams * 1.5 + ground * 4 + ground * 3;
        for (double pace : PER_AREA) {
            site += pace * visible;
        }
        for (double minutes : PER_PIECE) {
            site += minutes;
        }
        double paid = site * 1.15 / 0.9 + 40 * 1.15 / 0.9 + 60 + 60;

        double labour = shop / 60 * 36 + paid / 60 * 44;
        double direct = 396 + 310 + printed * 0.008 * 110 + visible * 1.2 + labour + 70 + 90;
        double cost = (direct + 0.35 * labour) * 1.05;
        return cost / 0.7 * 1.2;
    }

    /** The same with a quantity for every figure. */
    static double quantities(Quantity<Length> width, Quantity<Length> height, double ratio) {
        Quantity<Length> overlap = metres(0.02);
        Quantity<Area> visible = area(width, height).subtract(area(metres(1), metres(2.1))).subtract(area(metres(1.4), metres(1.2))).subtract(area(metres(0.2), metres(0.1)));
        Quantity<Length> seams = height.multiply(5).subtract(metres(2.1)).subtract(metres(1.2));
        Quantity<Area> heated = visible.add(area(seams, overlap)).multiply(ratio);
        Quantity<Area> printed = area(metres(1.36).multiply(5).add(metres(0.56)), height.add(metres(0.05)));
        Quantity<Length> ground = width.subtract(metres(1));

        Quantity<Time> shop = minutes(45).multiply(1.15)
                .add(time(height.add(metres(0.05)).add(metres(0.00667)).multiply(6).multiply(Quantities.getQuantity(5, PER_METRE))).multiply(0.15))
                .add(minutes(19.34)).add(minutes(36).multiply(1.15)).add(minutes(12).multiply(1.15));
        Quantity<Time> site = time(heated.multiply(Quantities.getQuantity(10, PER_SQUARE_METRE))).add(time(seams.multiply(Quantities.getQuantity(1.5, PER_METRE))))
                .add(time(ground.multiply(Quantities.getQuantity(4, PER_METRE)))).add(time(ground.multiply(Quantities.getQuantity(3, PER_METRE))));
        for (double pace : PER_AREA) {
            site = site.add(time(visible.multiply(Quantities.getQuantity(pace, PER_SQUARE_METRE))));
        }
        for (double minutes : PER_PIECE) {
            site = site.add(minutes(minutes));
        }
        Quantity<Time> paid = site.multiply(1.15 / 0.9).add(minutes(40).multiply(1.15 / 0.9)).add(minutes(60)).add(minutes(60));

        Quantity<Dimensionless> labour = money(shop.multiply(Quantities.getQuantity(36, PER_HOUR))).add(money(paid.multiply(Quantities.getQuantity(44, PER_HOUR))));
        Quantity<Dimensionless> direct = euros(396).add(euros(310)).add(money(printed.multiply(Quantities.getQuantity(0.008 * 110, EACH_SQUARE_METRE))))
                .add(money(visible.multiply(Quantities.getQuantity(1.2, EACH_SQUARE_METRE)))).add(labour).add(euros(70)).add(euros(90));
        Quantity<Dimensionless> cost = direct.add(labour.multiply(0.35)).multiply(1.05);
        return cost.divide(0.7).multiply(1.2).to(ShopUnits.ONE).getValue().doubleValue();
    }

    private static final Unit<?> PER_METRE = Units.MINUTE.divide(Units.METRE);
    private static final Unit<?> PER_SQUARE_METRE = Units.MINUTE.divide(Units.SQUARE_METRE);
    private static final Unit<?> PER_HOUR = ShopUnits.ONE.divide(Units.HOUR);
    private static final Unit<?> EACH_SQUARE_METRE = ShopUnits.ONE.divide(Units.SQUARE_METRE);

    private static Quantity<Length> metres(double length) {
        return Quantities.getQuantity(length, Units.METRE);
    }

    private static Quantity<Time> minutes(double time) {
        return Quantities.getQuantity(time, Units.MINUTE);
    }

    private static Quantity<Dimensionless> euros(double money) {
        return Quantities.getQuantity(money, ShopUnits.ONE);
    }

    private static Quantity<Area> area(Quantity<Length> width, Quantity<Length> height) {
        return width.multiply(height).asType(Area.class);
    }

    private static Quantity<Time> time(Quantity<?> product) {
        return product.asType(Time.class);
    }

    private static Quantity<Dimensionless> money(Quantity<?> product) {
        return product.asType(Dimensionless.class);
    }
}
