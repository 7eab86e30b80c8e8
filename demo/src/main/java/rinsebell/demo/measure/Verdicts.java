package rinsebell.demo.measure;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import rinsebell.app.shelf.InventedProducts;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.command.Judgement;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Product;
import rinsebell.floor.rule.MixtureRules;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.unit.Grams;

/**
 * {@code java -cp rinsebell-demo.jar rinsebell.demo.measure.Verdicts}: what it takes to judge a mixture of eight portions
 * on a shelf of five hundred, beside one plain pass over that shelf.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class Verdicts {
    private static final int PRODUCTS = 500;
    private static final Instant AT = Instant.parse("2026-05-16T08:00:00Z");

    private final Floor floor = shelf();
    private final List<Portion> eight = eight(floor);

    public static void main(String... arguments) throws RunnerException {
        new Runner(new OptionsBuilder().include(Verdicts.class.getSimpleName()).build()).run();
    }

    /** Every product of the invented shelf again and again. */
    private static Floor shelf() {
        var all = InventedProducts.all();
        var facts = IntStream.range(0, PRODUCTS)
                .mapToObj(i -> entered(i + 1, all.get(i % all.size())))
                .toList();
        return Floor.EMPTY.with(facts);
    }

    private static Fact entered(long seq, Directions directions) {
        return new Fact(seq, Stream.SALON, AT, AT, null, new SalonEvent.ProductEntered(directions));
    }

    /** Four kinds of cream, colour and additive, two of each, and two developers. */
    private static List<Portion> eight(Floor floor) {
        var wanted = List.of(
                InventedProducts.MILD_CREAM,
                InventedProducts.DARK_BROWN,
                InventedProducts.CLEAR,
                InventedProducts.DEVELOPER_20);
        var portions = new ArrayList<Portion>();
        for (var directions : wanted) {
            floor.salon().products().stream()
                    .filter(product -> product.directions().name().equals(directions.name()))
                    .skip(10)
                    .limit(2)
                    .forEach(product -> portions.add(new Portion(product.id(), 1, Grams.of("30.5"))));
        }
        return List.copyOf(portions);
    }

    /** Each directions is looked at once. */
    @Benchmark
    public void onePlainPass(Blackhole hole) {
        for (Product product : floor.salon().products()) {
            hole.consume(product.directions().kind());
        }
    }

    /** Ratio, strengths, what may meet what, and the law. */
    @Benchmark
    public void theMixtureJudged(Blackhole hole) {
        hole.consume(MixtureRules.judge(eight, floor.salon()));
    }

    /** All that the bench says of a bowl: on and off the scalp, and whether its reason matters. */
    @Benchmark
    public void allThatTheBenchSays(Blackhole hole) {
        hole.consume(Judgement.of(floor, null, eight, BowlReason.FIRST, AT));
    }
}
