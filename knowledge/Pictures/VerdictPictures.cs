namespace DxAssistant.Knowledge.Pictures;

/// <summary>The picture that belongs to a verdict.</summary>
public static class VerdictPictures
{
    /// <summary>Draws it; null when there is nothing to show, for a reading that cannot be.</summary>
    public static Drawn? Of(VerdictFacts facts, IPictureWords words)
    {
        if (facts.Expected.IsEmpty) return null;
        var caption = new Caption(facts, words);
        return facts.Judge switch
        {
            "thermistor-curve" => SensorCurvePicture.Draw(caption),
            "superheat" or "subcooling" or "saturation-split" =>
                SaturationPicture.Draw(caption) ?? ScalePicture.Draw(caption),
            "voltage-unbalance" => UnbalancePicture.Draw(caption) ?? BarsPicture.Draw(caption),
            "split-supply" => SplitSupplyPicture.Draw(caption) ?? BarsPicture.Draw(caption),
            "winding-balance" or "module-diodes" => BarsPicture.Draw(caption),
            _ => facts.Expected.Length == 1 ? ScalePicture.Draw(caption) : BarsPicture.Draw(caption),
        };
    }
}
