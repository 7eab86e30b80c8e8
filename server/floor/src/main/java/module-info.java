/** The colour floor: facts, clocks, restrictions and bells, free of any framework. */
module rinsebell.floor {
    requires static transitive org.jspecify;

    exports rinsebell.floor;
    exports rinsebell.floor.basin;
    exports rinsebell.floor.bell;
    exports rinsebell.floor.bowl;
    exports rinsebell.floor.client;
    exports rinsebell.floor.clock;
    exports rinsebell.floor.command;
    exports rinsebell.floor.mix;
    exports rinsebell.floor.product;
    exports rinsebell.floor.report;
    exports rinsebell.floor.rule;
    exports rinsebell.floor.salon;
    exports rinsebell.floor.turnaround;
    exports rinsebell.floor.unit;
    exports rinsebell.floor.visit;
}
