package rinsebell.floor.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openscience.cdk.silent.SilentChemObjectBuilder;
import org.openscience.cdk.tools.manipulator.MolecularFormulaManipulator;

/**
 * The trade's volumes beside the chemistry from which they come: so many litres of oxygen from a litre of solution, by 2
 * H2O2 to 2 H2O and O2. Molar masses are of the Chemistry Development Kit (cdk.github.io), molar volumes of a gas are
 * textbook figures (faculty.mu.edu.sa/smohamed, "Molar volume of a gas"): 22.414 L/mol at 0 °C and 101.325 kPa, 22.711
 * L/mol at 0 °C and 100 kPa. What comes of it is grams in 100 mL (% w/v), which in so thin a solution is hardly more than
 * grams in 100 g; the convention makes no difference.
 */
class PeroxideChemistryTest {
    /** The convention is a rounding of the chemistry: within one and a half of a hundred. */
    private static final double TOLERANCE = 0.015;

    private static double molarMass(String formula) {
        return MolecularFormulaManipulator.getMass(
                MolecularFormulaManipulator.getMolecularFormula(formula, SilentChemObjectBuilder.getInstance()),
                MolecularFormulaManipulator.MolWeight);
    }

    private static double percentOf(int volumes, double molarVolume) {
        var molesInALitre = 2 * volumes / molarVolume;
        return molesInALitre * molarMass("H2O2") / 10;
    }

    @ParameterizedTest
    @CsvSource({
        "10, 22.414",
        "20, 22.414",
        "30, 22.414",
        "40, 22.414",
        "10, 22.711",
        "20, 22.711",
        "30, 22.711",
        "40, 22.711"
    })
    void theConventionIsNearTheChemistry(int volumes, double molarVolume) {
        var convention = Percent.ofVolumes(volumes).value().doubleValue();
        assertThat(percentOf(volumes, molarVolume)).isCloseTo(convention, within(TOLERANCE * convention));
    }

    /** Worked example: 30 volumes with 22.4 L/mol are 9.11 % w/v (chemistrytip.blogspot.com, 2010/09). */
    @Test
    void aWorkedExampleComesOut() {
        assertThat(percentOf(30, 22.4)).isCloseTo(9.11, within(0.005));
    }

    /** Nothing is lost: what goes in weighs as much as what comes out. */
    @Test
    void theEquationBalances() {
        assertThat(2 * molarMass("H2O") + molarMass("O2")).isCloseTo(2 * molarMass("H2O2"), within(1e-9));
    }

    /** USP 31, Hydrogen Peroxide Topical Solution: the formula weight is 34.01. */
    @Test
    void theMolarMassIsThatOfThePharmacopoeia() {
        assertThat(molarMass("H2O2")).isCloseTo(34.01, within(0.01));
    }
}
