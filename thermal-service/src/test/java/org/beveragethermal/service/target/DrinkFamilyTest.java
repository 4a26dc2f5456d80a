/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class DrinkFamilyTest {
    static List<DrinkStyle> styles() {
        return Targets.styles();
    }

    @Test
    void everyFamilyHasAStyleAndAnIdOfItsOwn() {
        assertThat(Targets.styles().stream().map(DrinkStyle::family)).contains(DrinkFamily.values());
        assertThat(Arrays.stream(DrinkFamily.values()).map(DrinkFamily::id)).doesNotHaveDuplicates();
        assertThat(DrinkFamily.LOW_ALCOHOL_WINE.id()).isEqualTo("low-alcohol-wine");
        assertThat(DrinkFamily.LOW_ALCOHOL_WINE.label()).isEqualTo("low alcohol wine");
    }

    /** Usual strengths are from memory. */
    @ParameterizedTest
    @CsvSource({
        "red-full, 13.5, WINE",
        "sweet-white, 10, SWEET_WINE",
        "sparkling-sweet, 11, SPARKLING_WINE",
        "fortified-red, 20, FORTIFIED_WINE",
        "vermouth-dry, 18, VERMOUTH",
        "low-alcohol-sparkling, 0, LOW_ALCOHOL_WINE",
        "mulled-wine, 9, MULLED_WINE",
        "perry, 5, CIDER",
        "beer-stout, 4.5, BEER",
        "beer-low-alcohol, 0.5, LOW_ALCOHOL_BEER",
        "sake-nurukan, 15, SAKE",
        "spirit-whisky, 40, SPIRIT",
        "liqueur, 25, LIQUEUR",
        "cream-liqueur, 17, CREAM_LIQUEUR",
        "water-sparkling, 0, WATER",
        "soft-drink, 0, SOFT_DRINK",
        "juice, 0, JUICE",
        "milk-cold, 0, MILK",
        "hot-chocolate, 0, MILK",
        "tea-black, 0, TEA",
        "coffee-filter, 0, COFFEE",
    })
    void styleMakesItsDrink(String id, double percent, Beverage.Kind kind) {
        Beverage drink = Targets.style(id).drink(percentByVolume(percent));
        assertThat(drink.kind()).isEqualTo(kind);
        assertThat(drink.strengthByVolume()).isCloseTo(percent / 100, org.assertj.core.api.Assertions.within(1e-6));
    }

    @ParameterizedTest
    @MethodSource("styles")
    void sparklingStylesHoldCarbonDioxideAndServedOnesAreLiquid(DrinkStyle style) {
        Beverage drink = style.drink(percentByVolume(usualPercent(style.family())));
        if (style.sparkling()) {
            assertThat(drink.composition().carbonDioxideKgPerM3()).isBetween(4.0, 12.0);
            assertThat(drink.carbonDioxide()).isPresent();
        }
        ServingTarget envelope = Targets.of(style, RangePolicy.envelope());
        assertThat(envelope.lowK()).as("%s at %s", style.id(), envelope).isGreaterThanOrEqualTo(drink.freezingOnsetK());
        drink.temperatureRange().require(envelope.aimK(), style.id());
    }

    private static double usualPercent(DrinkFamily family) {
        return switch (family) {
            case SPIRIT -> 40;
            case LIQUEUR -> 25;
            case CREAM_LIQUEUR -> 17;
            case FORTIFIED_WINE, VERMOUTH -> 18;
            case SAKE -> 15;
            case WINE, SPARKLING_WINE, MULLED_WINE -> 12;
            case BEER, CIDER -> 5;
            default -> 0;
        };
    }

    @Test
    void strengthThatTheFamilyCannotHaveIsRefused() {
        assertThatThrownBy(() -> Targets.style("tea-black").drink(percentByVolume(12)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("strength of tea");
        assertThatThrownBy(() -> Targets.style("red-full").drink(percentByVolume(40)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Targets.style("low-alcohol-red").drink(percentByVolume(12)))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void whatHoldsAlcoholAndWhatSpoilsIsKnown() {
        assertThat(Arrays.stream(DrinkFamily.values()).filter(family -> !family.alcoholic()))
                .containsExactly(
                        DrinkFamily.WATER,
                        DrinkFamily.SOFT_DRINK,
                        DrinkFamily.JUICE,
                        DrinkFamily.MILK,
                        DrinkFamily.HOT_CHOCOLATE,
                        DrinkFamily.TEA,
                        DrinkFamily.COFFEE);
    }

    @Test
    void everythingThatIsKeptHasAStorageRangeAndMadeDrinksHaveNone() {
        Set<DrinkFamily> made =
                Set.of(DrinkFamily.TEA, DrinkFamily.COFFEE, DrinkFamily.HOT_CHOCOLATE, DrinkFamily.MULLED_WINE);
        Set<DrinkFamily> without = Targets.styles().stream()
                .filter(style -> Targets.storageOf(style).isEmpty())
                .map(DrinkStyle::family)
                .collect(Collectors.toSet());
        assertThat(without).isEqualTo(made);
    }
}
