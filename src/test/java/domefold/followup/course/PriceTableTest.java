package domefold.followup.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import domefold.outcome.Refusal;
import domefold.store.CsvText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A practice's own prices, read or refused. */
class PriceTableTest {
    @Test
    void aPriceListKeepsItsCurrencyAndLeavesOutWhatItDoesNotName() {
        PriceList prices = PriceTable.read(CsvText.read("prices", "item,price,currency\nultrasound,120,EUR\nmri,540.50,EUR\n"));
        assertEquals("EUR", prices.currency());
        assertEquals(540.5, prices.of(PriceList.Item.MRI).orElseThrow());
        assertEquals(true, prices.of(PriceList.Item.EXCHANGE_GEL).isEmpty());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "item,price/mri,5; prices-columns; line 1",
        "item,price,currency; prices-empty; prices",
        "item,price,currency/mri,5,; prices-row; line 2",
        "item,price,currency/mri,5,EUR/ultrasound,5,USD; prices-row; line 3",
        "item,price,currency/mri,5,EUR/mri,6,EUR; prices-row; line 3",
        "item,price,currency/ct,5,EUR; prices-row; line 2",
        "item,price,currency/mri,,EUR; prices-row; line 2",
        "item,price,currency/mri,-1,EUR; prices-row; line 2",
        "item,price,currency/mri,dear,EUR; prices-row; line 2",
        "item,price,currency/mri,NaN,EUR; prices-row; line 2",
    })
    void aPriceListThatSaysTooLittleIsRefusedWithItsLine(String text, String code, String where) {
        Refusal refusal = assertThrows(Refusal.class, () -> PriceTable.read(CsvText.read("prices", text.replace("/", "\n") + "\n")));
        assertEquals(code, refusal.code());
        assertEquals(where, refusal.where());
    }
}
