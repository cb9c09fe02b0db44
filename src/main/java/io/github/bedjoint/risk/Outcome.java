package io.github.bedjoint.risk;

import io.github.bedjoint.job.JobFigures;
import java.time.ZonedDateTime;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** A figure of a job whose spread is asked for. */
public enum Outcome {
    /** Paid time in all, in person-seconds. */
    PAID_TIME("Paid time") {
        @Override
        double of(JobFigures figures) {
            return figures.paidS();
        }
    },
    /** Length of the film rolls opened, in metres. */
    FILM("Film opened") {
        @Override
        double of(JobFigures figures) {
            return figures.filmM();
        }
    },
    /** Total cost before profit and tax, in the job's currency. */
    COST("Cost") {
        @Override
        double of(JobFigures figures) {
            return amount(figures.cost());
        }
    },
    /** What the customer would pay if the price followed the cost, in the job's currency. */
    PRICE("Price") {
        @Override
        double of(JobFigures figures) {
            return amount(figures.total());
        }
    },
    /** The earliest hand-over, in seconds of the epoch. */
    HAND_OVER("Hand-over") {
        @Override
        double of(JobFigures figures) {
            ZonedDateTime handOver = figures.handOver();
            return handOver == null ? Double.NaN : handOver.toEpochSecond();
        }
    };

    private final String title;

    Outcome(String title) {
        this.title = title;
    }

    /** The figure, NaN where there is none. */
    abstract double of(JobFigures figures);

    private static double amount(@Nullable Money money) {
        return money == null ? Double.NaN : money.getAmount().doubleValue();
    }

    /**
     * The outcome in words.
     *
     * @return a heading
     */
    public String title() {
        return title;
    }
}
