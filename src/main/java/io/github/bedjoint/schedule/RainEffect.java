package io.github.bedjoint.schedule;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * What a day of rain would do to a timetable. Immutable.
 *
 * @param day   the day
 * @param then  the dates if it rains
 * @param moves the activities that start or end at another moment, in the network's order; none if there are no dates then
 * @param delay how much later the hand-over is; zero if there are no dates then
 */
public record RainEffect(LocalDate day, Timetable then, List<Move> moves, Duration delay) {
    static RainEffect of(Network network, Timetable dry, LocalDate day) {
        Timetable wet = network.withRain(network.rain().on(day)).plan();
        List<Move> moves = new ArrayList<>();
        if (!wet.isPossible() || !dry.isPossible()) {
            return new RainEffect(day, wet, List.of(), Duration.ZERO);
        }
        for (Slot slot : dry.slots()) {
            Slot other = wet.slot(slot.activity().id());
            if (!other.earlyStart().equals(slot.earlyStart()) || !other.earlyEnd().equals(slot.earlyEnd())) {
                moves.add(new Move(slot.activity().id(), slot.earlyStart(), other.earlyStart()));
            }
        }
        return new RainEffect(day, wet, List.copyOf(moves), Duration.between(dry.handOver(), wet.handOver()));
    }
}
