/** The colour floor: facts, clocks, restrictions and bells, free of any framework. */
module rinsebell.floor {
    requires static transitive org.jspecify;

    exports rinsebell.floor;
}
