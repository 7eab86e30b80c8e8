package rinsebell.planner;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Problems with a published or enumerated optimum, built with the model builder that the basins are planned with. */
class KnownOptimaTest {
    private static final Limit TEN_SECONDS = Limit.ofMillis(10_000);

    /** Pinedo Example 3.2.5, 1|r_j|Lmax [tpaviot/ProcessScheduler@83f0c14:docs/pinedo.md]. */
    private static final int[] P325 = {4, 2, 6, 5};

    private static final int[] R325 = {0, 1, 3, 5};
    private static final int[] D325 = {8, 12, 11, 10};

    /** Carlier 1982 heads-bodies-tails (EJOR 11:42-47; data from memory; no source found). */
    private static final int[] R_CARLIER = {10, 13, 11, 20, 30, 0, 30};

    private static final int[] P_CARLIER = {5, 6, 7, 4, 3, 6, 2};
    private static final int[] Q_CARLIER = {7, 26, 24, 21, 8, 17, 0};

    /** Pinedo 2.3.2, P2|prec|Cmax [tpaviot/ProcessScheduler@83f0c14:docs/pinedo.md]. */
    private static final int[] P232 = {8, 7, 7, 2, 3, 2, 2, 8, 8, 15};

    private static final int[][] BEFORE_232 = {
        {1, 2}, {1, 3}, {2, 10}, {3, 10}, {5, 3}, {4, 5}, {4, 6}, {5, 8}, {6, 7}, {7, 9}, {5, 9}, {7, 8}
    };

    /** Optimum Lmax 5, unique sequence 1-3-4-2 [tpaviot/ProcessScheduler@83f0c14:docs/pinedo.md]. */
    @Test
    void example325() {
        var built = machines(R325, P325, 1);
        var best = built.minimise(Objective.maxLateness(one -> D325[one.index]));
        assertThat(best.isOptimal()).isTrue();
        assertThat(best.value()).isEqualTo(5);
        assertThat(sequence(best)).containsExactly(1, 3, 4, 2);
    }

    /**
     * Published bounds: root and (1,*) 5 by preemptive EDD; (2,*) 7; (4,*) 9; (1,2,*) 6
     * [tpaviot/ProcessScheduler@83f0c14:docs/pinedo.md]. Behind 4 there is a closer one, 10: the three others end at 22 at
     * the earliest, and none of them is due after 12 [derived].
     */
    @ParameterizedTest
    @CsvSource({"'', 5, 5", "1, 5, 5", "2, 7, 7", "4, 9, 10", "12, 6, 6"})
    void boundsOf325(String first, int bound, int reckoned) {
        var begun = first.chars().map(digit -> digit - '1').toArray();
        assertThat(preemptive(R325, P325, i -> D325[i], begun))
                .isEqualTo(reckoned)
                .isGreaterThanOrEqualTo(bound);
        var built = machines(R325, P325, 1);
        for (var place = 0; place < begun.length; place++) {
            var head = Arrays.stream(begun).limit(place + 1).boxed().toList();
            for (var then = 0; then < P325.length; then++) {
                if (!head.contains(then)) {
                    built.model.precedes(built.tasks.get(begun[place]), built.tasks.get(then));
                }
            }
        }
        var best = built.minimise(Objective.maxLateness(one -> D325[one.index]));
        assertThat(best.isOptimal()).isTrue();
        assertThat(best.value()).isGreaterThanOrEqualTo(reckoned);
    }

    /** Schrage 53 (6-1-2-3-4-5-7), preemptive bound 49, optimum 50 [derived: full enumeration]. */
    @Test
    void carlier() {
        var schrage = schrage();
        assertThat(schrage).containsExactly(6, 1, 2, 3, 4, 5, 7);
        assertThat(lengthOf(schrage)).isEqualTo(53);
        assertThat(preemptive(R_CARLIER, P_CARLIER, i -> -Q_CARLIER[i], new int[0]))
                .isEqualTo(49);
        var best = machines(R_CARLIER, P_CARLIER, 1).minimise(Objective.maxWithTail(one -> Q_CARLIER[one.index]));
        assertThat(best.isOptimal()).isTrue();
        assertThat(best.value()).isEqualTo(50);
        assertThat(lengthOf(sequence(best))).isEqualTo(50);
    }

    /** Identical parallel machines [derived]: 3.2.5 data Lmax 5/0/0 on 1/2/3 machines. */
    @ParameterizedTest
    @CsvSource({"1, 5", "2, 0", "3, 0"})
    void example325OnMoreMachines(int machines, int lateness) {
        for (var built : List.of(machines(R325, P325, machines), alternatives(R325, P325, machines))) {
            var best = built.minimise(Objective.maxLateness(one -> D325[one.index]));
            assertThat(best.isOptimal()).isTrue();
            assertThat(best.value()).isEqualTo(lateness);
        }
    }

    /** Identical parallel machines [derived]: Carlier data max(C+q) 50/45 on 1/2. */
    @ParameterizedTest
    @CsvSource({"1, 50", "2, 45"})
    void carlierOnMoreMachines(int machines, int length) {
        for (var built :
                List.of(machines(R_CARLIER, P_CARLIER, machines), alternatives(R_CARLIER, P_CARLIER, machines))) {
            var best = built.minimise(Objective.maxWithTail(one -> Q_CARLIER[one.index]));
            assertThat(best.isOptimal()).isTrue();
            assertThat(best.value()).isEqualTo(length);
        }
    }

    /** Graham LPT tight family [bound: ar5iv.org/html/1801.05489; values derived]. */
    @ParameterizedTest
    @CsvSource({"2, 3 3 2 2 2, 7, 6", "3, 5 5 4 4 3 3 3, 11, 9", "4, 7 7 6 6 5 5 4 4 4, 15, 12"})
    void graham(int machines, String jobs, int longestFirst, int optimum) {
        var p = Arrays.stream(jobs.split(" ")).mapToInt(Integer::parseInt).toArray();
        assertThat(inOrder(p, machines)).isEqualTo(longestFirst);
        for (var built :
                List.of(machines(new int[p.length], p, machines), alternatives(new int[p.length], p, machines))) {
            var best = built.minimise(Objective.makespan());
            assertThat(best.isOptimal()).isTrue();
            assertThat(best.value()).isEqualTo(optimum);
        }
    }

    /** Pinedo 2.3.2 [same docs]: optimum 31; all p-1: 27; three machines: 30. */
    @ParameterizedTest
    @CsvSource({"0, 2, 31", "1, 2, 27", "0, 3, 30"})
    void example232(int shorter, int machines, int optimum) {
        var p = Arrays.stream(P232).map(one -> one - shorter).toArray();
        var built = machines(new int[p.length], p, machines);
        for (var before : BEFORE_232) {
            built.model.precedes(built.tasks.get(before[0] - 1), built.tasks.get(before[1] - 1));
        }
        var best = built.minimise(Objective.makespan());
        assertThat(best.isOptimal()).isTrue();
        assertThat(best.value()).isEqualTo(optimum);
    }

    /**
     * Patterson 1 [ptal/kobe-scheduling@a36af08:data/rcpsp/patterson.rcp/, optimum in patterson.optimum.csv]: optimum 19
     * (critical path 18).
     */
    @Test
    void patterson1() {
        var best = project(new int[] {2, 1, 2}, """
                1: 0; 0 0 0; 2 3 4
                2: 6; 1 0 0; 9 10
                3: 4; 0 0 0; 5 6 7
                4: 3; 0 0 0; 8 11
                5: 1; 0 0 0; 10
                6: 6; 1 0 1; 12
                7: 2; 1 0 0; 8 11
                8: 1; 0 0 0; 13
                9: 4; 0 1 1; 14
                10: 3; 0 0 1; 12
                11: 2; 0 0 1; 12
                12: 3; 0 1 0; 13
                13: 5; 0 0 0; 14
                14: 0; 0 0 0;
                """);
        assertThat(best.isOptimal()).isTrue();
        assertThat(best.value()).isEqualTo(19);
    }

    /**
     * PSPLIB j301_1 [data PyJobShop/PSPLIB@ef43efb:data/j301_1.sm; optimum
     * ptal/kobe-scheduling:data/rcpsp/j30.sm/optimum/optimum.csv, proven in
     * ScheduleOpt/optalcp-benchmarks@adcef15:benchmarks/rcpsp/results/Optal-4W-2FDS.csv]: optimum 43 (critical path 38).
     */
    @Test
    void j301x1() {
        var best = project(new int[] {12, 13, 4, 12}, """
                1: 0; 0 0 0 0; 2 3 4
                2: 8; 4 0 0 0; 6 11 15
                3: 4; 10 0 0 0; 7 8 13
                4: 6; 0 0 0 3; 5 9 10
                5: 3; 3 0 0 0; 20
                6: 8; 0 0 0 8; 30
                7: 5; 4 0 0 0; 27
                8: 9; 0 1 0 0; 12 19 27
                9: 2; 6 0 0 0; 14
                10: 7; 0 0 0 1; 16 25
                11: 9; 0 5 0 0; 20 26
                12: 2; 0 7 0 0; 14
                13: 6; 4 0 0 0; 17 18
                14: 3; 0 8 0 0; 17
                15: 9; 3 0 0 0; 25
                16: 10; 0 0 0 5; 21 22
                17: 6; 0 0 0 8; 22
                18: 5; 0 0 0 7; 20 22
                19: 3; 0 1 0 0; 24 29
                20: 7; 0 10 0 0; 23 25
                21: 2; 0 0 0 6; 28
                22: 7; 2 0 0 0; 23
                23: 2; 3 0 0 0; 24
                24: 3; 0 9 0 0; 30
                25: 3; 4 0 0 0; 30
                26: 7; 0 0 4 0; 31
                27: 8; 0 0 0 7; 32
                28: 3; 0 8 0 0; 31
                29: 7; 0 7 0 0; 32
                30: 2; 0 7 0 0; 32
                31: 2; 0 0 2 0; 32
                32: 0; 0 0 0 0;
                """);
        assertThat(best.value()).isEqualTo(43);
        assertThat(best.isOptimal()).isTrue();
    }

    private record Built(ScheduleModel model, List<Activity> tasks) {
        Outcome minimise(Objective objective) {
            return model.minimise(objective, TEN_SECONDS);
        }
    }

    /** As many alike as a resource has. */
    private static Built machines(int[] r, int[] p, int machines) {
        var built = tasks(r, p);
        var resource = built.model.resource(machines);
        built.tasks.forEach(task -> built.model.demand(resource, task, 1));
        return built;
    }

    /** Each by its number. */
    private static Built alternatives(int[] r, int[] p, int machines) {
        var built = machines(r, p, machines);
        var numbers = IntStream.rangeClosed(1, machines).toArray();
        built.tasks.forEach(task -> built.model.oneOf(task, numbers, 1));
        return built;
    }

    private static Built tasks(int[] r, int[] p) {
        var model = new ScheduleModel(
                Arrays.stream(r).max().orElse(0) + Arrays.stream(p).sum());
        var tasks = new ArrayList<Activity>();
        for (var i = 0; i < r.length; i++) {
            tasks.add(model.task(r[i], p[i]));
        }
        return new Built(model, tasks);
    }

    /** A project, told as "job: duration; demands; successors". */
    private static Outcome project(int[] capacities, String told) {
        var rows = told.lines().map(line -> line.split("[:;]", -1)).toList();
        var p = rows.stream().mapToInt(row -> number(row[1])).toArray();
        var built = tasks(new int[p.length], p);
        for (var r = 0; r < capacities.length; r++) {
            var resource = built.model.resource(capacities[r]);
            for (var i = 0; i < p.length; i++) {
                built.model.demand(resource, built.tasks.get(i), numbers(rows.get(i)[2])[r]);
            }
        }
        for (var i = 0; i < p.length; i++) {
            for (var then : numbers(rows.get(i)[3])) {
                built.model.precedes(built.tasks.get(i), built.tasks.get(then - 1));
            }
            built.tasks.get(i).rank(-tail(rows, i));
        }
        return built.minimise(Objective.makespan());
    }

    /** How long the longest way to the end is. */
    private static int tail(List<String[]> rows, int job) {
        var then = Arrays.stream(numbers(rows.get(job)[3])).map(next -> tail(rows, next - 1));
        return number(rows.get(job)[1]) + then.max().orElse(0);
    }

    private static int number(String text) {
        return Integer.parseInt(text.strip());
    }

    private static int[] numbers(String text) {
        return text.isBlank()
                ? new int[0]
                : Arrays.stream(text.strip().split(" "))
                        .mapToInt(Integer::parseInt)
                        .toArray();
    }

    private static List<Integer> sequence(Outcome outcome) {
        return IntStream.range(0, outcome.starts().size())
                .boxed()
                .sorted(Comparator.comparing(i -> outcome.starts().get(i)))
                .map(i -> i + 1)
                .toList();
    }

    /** The greatest lateness if work may be broken off and the earliest due of those there goes first; a lower bound. */
    private static int preemptive(int[] r, int[] p, java.util.function.IntUnaryOperator due, int[] begun) {
        var left = p.clone();
        var worst = Integer.MIN_VALUE;
        var now = 0;
        for (var first : begun) {
            now = Math.max(now, r[first]) + p[first];
            left[first] = 0;
            worst = Math.max(worst, now - due.applyAsInt(first));
        }
        for (; Arrays.stream(left).sum() > 0; now++) {
            var at = now;
            var next = IntStream.range(0, p.length)
                    .filter(i -> left[i] > 0 && r[i] <= at)
                    .boxed()
                    .min(Comparator.comparing(due::applyAsInt));
            if (next.isPresent() && --left[next.get()] == 0) {
                worst = Math.max(worst, now + 1 - due.applyAsInt(next.get()));
            }
        }
        return worst;
    }

    /** Of those there, the longest tail first. */
    private static List<Integer> schrage() {
        var coming =
                new ArrayList<>(IntStream.range(0, R_CARLIER.length).boxed().toList());
        coming.sort(Comparator.comparing(i -> R_CARLIER[i]));
        var there = new PriorityQueue<Integer>(Comparator.comparing(i -> -Q_CARLIER[i]));
        var order = new ArrayList<Integer>();
        var now = 0;
        while (!coming.isEmpty() || !there.isEmpty()) {
            now = there.isEmpty() ? Math.max(now, R_CARLIER[coming.get(0)]) : now;
            while (!coming.isEmpty() && R_CARLIER[coming.get(0)] <= now) {
                there.add(coming.remove(0));
            }
            var next = there.remove();
            order.add(next + 1);
            now += P_CARLIER[next];
        }
        return order;
    }

    private static int lengthOf(List<Integer> sequence) {
        var now = 0;
        var length = 0;
        for (var job : sequence) {
            now = Math.max(now, R_CARLIER[job - 1]) + P_CARLIER[job - 1];
            length = Math.max(length, now + Q_CARLIER[job - 1]);
        }
        return length;
    }

    /** Each to the machine that is free first. */
    private static int inOrder(int[] p, int machines) {
        var free = new int[machines];
        for (var one : p) {
            Arrays.sort(free);
            free[0] += one;
        }
        return Arrays.stream(free).max().orElseThrow();
    }
}
