package holdcurve.record.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.record.log.Heading.Role;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeadingTest {
  @ParameterizedTest
  @CsvSource({
    "time_s, TIME, s",
    "Time [min], TIME, min",
    "t/s, TIME, s",
    "time in s, TIME, s",
    "elapsed (mm:ss), TIME, mm:ss",
    "Time [hh:mm:ss.000], TIME, hh:mm:ss.000",
    "SECONDS, TIME, SECONDS",
    "pressure_kPa, PRESSURE, kPa",
    "Pressure [kPa], PRESSURE, kPa",
    "p (psi), PRESSURE, psi",
    "p, PRESSURE, ''",
    "rail pressure bar(g), PRESSURE, barg",
    "Pressure [bar(a)], PRESSURE, bara",
    "pressure_kg/cm2, PRESSURE, kg/cm2",
    "pressure_bar (rail), PRESSURE, bar",
    "pressure (rail), PRESSURE, ''",
    "pressure_kPa_gauge, PRESSURE, kPa",
    "gauge reading, PRESSURE, ''",
    "Pressure 1, PRESSURE, ''",
    "pressure at the tee, PRESSURE, ''",
    "pressure_furlong, PRESSURE, furlong",
    "pressure.furlong, PRESSURE, furlong",
    "Pressure {furlongs}, PRESSURE, furlongs",
    "rail pressure-hogsheads, PRESSURE, hogsheads",
    "p/in. Hg, PRESSURE, Hg",
    "mbar, PRESSURE, mbar",
    "fuel_temp_C, TEMPERATURE, C",
    "T [°C], TEMPERATURE, °C",
    "Fuel temperature (K), TEMPERATURE, K",
    "ambient temp °C, OTHER, °C",
    "manifold pressure kPa, OTHER, kPa",
    "Event, EVENT, ''",
    "Remarks, REMARK, ''",
    "rpm, OTHER, ''"
  })
  void saysWhatAColumnHolds(String text, Role role, String unit) {
    assertEquals(new Heading(role, unit, text), Heading.of(text));
  }
}
