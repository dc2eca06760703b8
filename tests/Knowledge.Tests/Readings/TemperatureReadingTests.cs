using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

public sealed class TemperatureReadingTests
{
    // As technicians type and dictate: temperatures.
    // What each is taken for follows from the rules on ReadingParser.
    public static TheoryData<string, string, string> Messages => ReadingTable.Of(
        """
        temperature-eu | twenty four degrees => 24 °C
        temperature-us | twenty four degrees => 24 °F
        temperature | twenty four degrees => ASK which-unit [24 °C | 24 °F]
        temperature | minus 5 C => -5 °C
        temperature | -5C => -5 °C
        temperature | −5 °C => -5 °C
        temperature | 24 => ASK no-unit [24 °C | 24 °F]
        temperature-us | 72.5 => 72.5 °F
        temperature-us | 72 => 72 °F
        temperature-us | it's 72 => 72 °F
        temperature-us | room is 72 => room=72 °F
        temperature-us | about 72 degrees => 72 °F
        temperature-us | 68.4 => 68.4 °F
        temperature-eu | 24,5 => 24.5 °C
        temperature-eu | -3 => -3 °C
        temperature-eu | minus three => -3 °C
        temperature-eu | three below zero => -3 °C
        temperature-eu | 5 below zero C => -5 °C
        temperature-eu | 24C => 24 °C
        temperature-eu | 75F => 75 °F
        temperature-us | 24C => 24 °C
        temperature-us | 24 => 24 °F
        superheat | 12 => ASK no-unit [12 K | 12 °F]
        superheat | 12F => 12 °F
        superheat | 12 degrees F => 12 °F
        superheat | 10K => 10 K
        temperature-us | suction line 52 => suction=52 °F
        temperature-us | 72.4 => 72.4 °F
        temperature-us | 72.4 F => 72.4 °F
        temperature-us | 22.4 C => 22.4 °C
        temperature-us | 22.4c => 22.4 °C
        temperature-us | 22c => 22 °C
        temperature-us | 22 celsius => 22 °C
        temperature-us | minus 4 => -4 °F
        temperature-us | negative 4 => -4 °F
        temperature-us | 4 below => NONE no-reading
        temperature-us | 4 below zero => -4 °F
        temperature-us | -4 => -4 °F
        temperature-us | −4 => -4 °F
        temperature-us | – 4 => ASK sign [4 °F | -4 °F]
        temperature-us | zero => 0 °F
        temperature-us | freezing => NONE no-reading
        temperature-us | about 70 => 70 °F
        temperature-us | seventy => 70 °F
        temperature-us | seventy two and a half => 72.5 °F
        temperature-us | 72 1/2 => 72.5 °F
        temperature-us | seventy-two point four => 72.4 °F
        temperature-us | 72 in the room => room=72 °F
        temperature-us | room's 72, outside's 95 => room=72 °F; outdoor=95 °F
        temperature-us | 72 inside 95 outside => indoor=72 °F; outdoor=95 °F
        temperature-us | 95 out => outdoor=95 °F
        temperature-us | low 70s => NONE no-reading
        temperature-us | mid 70's => NONE no-reading
        temperature-us | in the 70s => NONE no-reading
        temperature-us | 70-ish => 70 °F
        temperature-us | between 70 and 75 => ASK range [70 °F | 75 °F]
        temperature-us | 70/75 => ASK which-one [70 °F | 75 °F]
        temperature-us | 72 return 54 supply => return=72 °F; supply=54 °F
        temperature-us | return 72 supply 54 => return=72 °F; supply=54 °F
        temperature-us | supply is 54 and return is 72 => supply=54 °F; return=72 °F
        temperature-us | 18 degree split => 18 °F
        temperature-us | 18 degree drop => 18 °F
        temperature-us | 72° F => 72 °F
        temperature-us | 72ºF => 72 °F
        temperature-us | 72˚ => 72 °F
        temperature-us | 72*F => ASK unsure [72 °F]
        temperature-us | 72' => NONE no-reading
        temperature-us | 72 deg. => 72 °F
        temperature-us | 72 deg. F => 72 °F
        temperature-us | 72 degs => 72 °F
        temperature-us | 295K => ASK which-unit [295 kΩ | 295 K]
        temperature-us | 295 kelvin => 295 K
        temperature-us | 10k => 10 kΩ
        temperature-us | set to 72 reads 75 => 75 °F
        temperature-us | setpoint 72 room 75 => room=75 °F
        temperature-us | thermostat set at 72, actual 75 => ASK unsure [75 °F]
        temperature-us | thermostat says 72 my meter says 75 => ASK unsure [72 °F; 75 °F]
        temperature-us | it's 72 now was 80 => ASK which-one [72 °F | 80 °F]
        temperature-us | 72 wet bulb 63 => ASK unsure [63 °F]
        temperature-us | wet bulb 63 => ASK unsure [63 °F]
        temperature-us | 104 dischage => NONE no-reading
        temperature-us | 180 discharge => discharge=180 °F
        temperature-us | discharge line 180 => discharge=180 °F
        temperature-us | 24 degrees c => 24 °C
        temperature-us | 24 C or so => 24 °C
        temperature-us | T=24C => 24 °C
        temperature-us | temp 24C => 24 °C
        temperature-us | temp.24C => ASK unsure [24 °C]
        temperature-us | 24,5 °C => 24.5 °C
        temperature-us | 24.5. => 24.5 °F
        temperature-us | one oh five => 105 °F
        temperature-us | one hundred five => 105 °F
        temperature-us | 104f => 104 °F
        temperature-us | 104 f => 104 °F
        temperature | 100 => ASK no-unit [100 °C | 100 °F]
        temperature | 72 or 22C => ASK range [72 °C | 22 °C]
        temperature | 72F (22C) => ASK which-one [72 °F | 22 °C]
        temperature | 22C/72F => ASK which-one [22 °C | 72 °F]
        temperature | 22 C = 72 F => ASK which-one [22 °C | 72 °F]
        temperature | 24℃ => 24 °C
        temperature | 75℉ => 75 °F
        temperature | +5 °C => 5 °C
        temperature | 5 ° C => 5 °C
        temperature | - 40 °C => ASK sign [40 °C | -40 °C]
        temperature | minus forty => ASK no-unit [-40 °C | -40 °F]
        temperature | supply air is 20 degrees cooler than return => ASK unsure [supply=20 °C | supply=20 °F]
        temperature | 5 degrees below setpoint => ASK unsure [5 °C | 5 °F]
        temperature | it's 5 degrees C warmer => ASK unsure [5 °C]
        temperature | thirty-two fahrenheit => 32 °F
        temperature | 32 F => 32 °F
        temperature | zero celsius => 0 °C
        temperature | minus twelve point five celsius => -12.5 °C
        temperature | 12.5 below zero celsius => -12.5 °C
        temperature | ninety five => ASK no-unit [95 °C | 95 °F]
        temperature | 98.6 => ASK no-unit [98.6 °C | 98.6 °F]
        temperature | 20c outside 22c inside => outdoor=20 °C; indoor=22 °C
        temperature | outside air 35 C, room 24 C => outdoor=35 °C; room=24 °C
        temperature | indoor coil 8C outdoor coil 45C => indoor coil=8 °C; outdoor coil=45 °C
        """);

    [Theory]
    [MemberData(nameof(Messages))]
    public void Parse_TemperatureMessage_IsTakenAsMeant(string context, string message, string expected) =>
        Assert.Equal(expected, ReadingTable.Show(ReadingParser.Parse(message, ReadingTable.Context(context))));
}
