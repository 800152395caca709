package assize.measure;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A unit of measure with its exact size in the base unit of its dimension.
 *
 * <p>One inch is 25.4 mm and one pound 0.45359237 kg, exactly (international yard and pound
 * agreement, 1959); standard gravity is 9.80665 m/s² (CGPM 1901); the imperial gallon is 4.54609 L
 * and the US gallon 231 cubic inches. Every factor follows from these.
 */
@SuppressWarnings("ImmutableEnumChecker") // BigFraction and the copied list never change.
public enum Unit {
  MM(Dimension.LENGTH, "mm", "1", "millimeter", "millimeters", "millimetre", "millimetres"),
  CM(Dimension.LENGTH, "cm", "10", "centimeter", "centimeters", "centimetre", "centimetres"),
  M(Dimension.LENGTH, "m", "1000", "meter", "meters", "metre", "metres"),
  UM(Dimension.LENGTH, "µm", "1/1000", "μm", "um", "micron", "microns", "micrometer"),
  IN(Dimension.LENGTH, "in", "127/5", "in.", "inch", "inches", "\"", "″", "”", "''"),
  FT(Dimension.LENGTH, "ft", "1524/5", "ft.", "foot", "feet", "'", "′", "’"),
  YD(Dimension.LENGTH, "yd", "4572/5", "yd.", "yard", "yards"),
  THOU(Dimension.LENGTH, "thou", "127/5000", "mil", "mils"),
  G(Dimension.MASS, "g", "1", "gram", "grams"),
  KG(Dimension.MASS, "kg", "1000", "kilogram", "kilograms", "kilo", "kilos"),
  OZ(Dimension.MASS, "oz", "45359237/1600000", "oz.", "ounce", "ounces"),
  LB(Dimension.MASS, "lb", "45359237/100000", "lb.", "lbs", "lbs.", "pound", "pounds"),
  ST(Dimension.MASS, "st", "317514659/50000", "stone"),
  CWT(Dimension.MASS, "cwt", "317514659/6250", "hundredweight"),
  LONG_TON(Dimension.MASS, "long ton", "635029318/625", "long tons", "imperial ton"),
  SHORT_TON(Dimension.MASS, "short ton", "45359237/50", "short tons", "US ton", "US tons"),
  TONNE(Dimension.MASS, "t", "1000000", "tonne", "tonnes", "metric ton", "metric tons"),
  DEG(Dimension.ANGLE, "°", "1", "º", "deg", "deg.", "degree", "degrees"),
  ARCMIN(Dimension.ANGLE, "arcmin", "1/60", "arcminute", "arcminutes"),
  ARCSEC(Dimension.ANGLE, "arcsec", "1/3600", "arcsecond", "arcseconds"),
  L(Dimension.VOLUME, "L", "1", "liter", "liters", "litre", "litres"),
  ML(Dimension.VOLUME, "ml", "1/1000", "cc", "cm3", "cm³", "milliliter", "milliliters"),
  CU_IN(Dimension.VOLUME, "cu in", "2048383/125000000", "cu. in.", "in3", "in³", "cubic inches"),
  IMP_GAL(Dimension.VOLUME, "imp gal", "454609/100000", "imp. gal.", "imperial gallons"),
  US_GAL(Dimension.VOLUME, "US gal", "473176473/125000000", "US gallon", "US gallons"),
  IMP_PT(Dimension.VOLUME, "imp pt", "454609/800000", "imperial pint", "imperial pints"),
  US_PT(Dimension.VOLUME, "US pt", "473176473/1000000000", "US pint", "US pints"),
  IMP_QT(Dimension.VOLUME, "imp qt", "454609/400000", "imperial quart", "imperial quarts"),
  US_QT(Dimension.VOLUME, "US qt", "473176473/500000000", "US quart", "US quarts"),
  PA(Dimension.PRESSURE, "Pa", "1", "pascal", "pascals"),
  KPA(Dimension.PRESSURE, "kPa", "1000", "kilopascal", "kilopascals"),
  BAR(Dimension.PRESSURE, "bar", "100000", "bars"),
  PSI(Dimension.PRESSURE, "psi", "8896443230521/1290320000", "lbf/in2", "lbf/in²", "lb/in²"),
  N_M(Dimension.TORQUE, "N m", "1", "Nm", "N·m", "newton meter", "newton meters"),
  LBF_FT(
      Dimension.TORQUE,
      "lbf ft",
      "3389544870828501/2500000000000000",
      "lbf·ft",
      "lbf-ft",
      "ft lbf",
      "lb ft",
      "ft lb",
      "lb-ft",
      "ft-lb"),
  LBF_IN(
      Dimension.TORQUE,
      "lbf in",
      "1129848290276167/10000000000000000",
      "lbf·in",
      "lbf-in",
      "in lbf",
      "lb in",
      "in lb"),
  W(Dimension.POWER, "W", "1", "watt", "watts"),
  KW(Dimension.POWER, "kW", "1000", "kilowatt", "kilowatts"),
  HP(Dimension.POWER, "hp", "37284993579113511/50000000000000", "bhp", "horsepower"),
  PS(Dimension.POWER, "PS", "588399/800", "metric hp", "metric horsepower"),
  V(Dimension.VOLTAGE, "V", "1", "volt", "volts"),
  A(Dimension.CURRENT, "A", "1", "amp", "amps", "ampere", "amperes"),
  AH(Dimension.CHARGE, "Ah", "1", "A h", "ampere hours", "amp hours"),
  KM_H(Dimension.SPEED, "km/h", "1", "kph", "kmh"),
  MPH(Dimension.SPEED, "mph", "25146/15625", "miles per hour", "mi/h");

  private final Dimension dimension;
  private final String symbol;
  private final BigFraction factor;
  private final List<String> names;

  Unit(Dimension dimension, String symbol, String factor, String... names) {
    this.dimension = dimension;
    this.symbol = symbol;
    this.factor = BigFraction.parse(factor);
    this.names = List.of(names);
  }

  public Dimension dimension() {
    return dimension;
  }

  /** Returns the short form that reports print. */
  public String symbol() {
    return symbol;
  }

  /** Returns the other ways in which people write it; upper and lower case are the same. */
  public List<String> names() {
    return names;
  }

  /** Returns how many base units of the dimension make one, exactly. */
  public BigFraction factor() {
    return factor;
  }

  boolean isInch() {
    return this == IN || this == FT || this == YD;
  }
}
