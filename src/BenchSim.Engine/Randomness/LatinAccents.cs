using System.Collections.Frozen;
using System.Text;

namespace BenchSim.Engine.Randomness;

/// <summary>
/// Puts a Latin letter and the accents typed behind it together into the one letter that Unicode has for them, so that a name means the
/// same however it was typed. This is the part of normal form C that names in Latin letters need; the run-time's own normalization does
/// nothing when it runs without language data, as this program does on purpose.
/// </summary>
public static class LatinAccents
{
    // By accent: pairs of a letter, and the letter with that accent. From the Unicode Character Database, all canonical compositions of
    // Latin letters.
    private static readonly FrozenDictionary<char, string> s_pairs = new Dictionary<char, string>
    {
        ['\u0300'] = "AÀEÈIÌOÒUÙaàeèiìoòuùÜǛüǜNǸnǹĒḔēḕŌṐōṑWẀwẁÂẦâầĂẰăằÊỀêềÔỒôồƠỜơờƯỪưừYỲyỳ",
        ['\u0301'] =
            "AÁEÉIÍOÓUÚYÝaáeéiíoóuúyýCĆcćLĹlĺNŃnńRŔrŕSŚsśZŹzźÜǗüǘGǴgǵÅǺåǻÆǼæǽØǾøǿÇḈçḉĒḖēḗÏḮïḯKḰkḱMḾmḿÕṌõṍŌṒōṓ"
            + "PṔpṕŨṸũṹWẂwẃÂẤâấĂẮăắÊẾêếÔỐôốƠỚơớƯỨưứ",
        ['\u0302'] = "AÂEÊIÎOÔUÛaâeêiîoôuûCĈcĉGĜgĝHĤhĥJĴjĵSŜsŝWŴwŵYŶyŷZẐzẑẠẬạậẸỆẹệỌỘọộ",
        ['\u0303'] = "AÃNÑOÕaãnñoõIĨiĩUŨuũVṼvṽÂẪâẫĂẴăẵEẼeẽÊỄêễÔỖôỗƠỠơỡƯỮưữYỸyỹ",
        ['\u0304'] = "AĀaāEĒeēIĪiīOŌoōUŪuūÜǕüǖÄǞäǟȦǠȧǡÆǢæǣǪǬǫǭÖȪöȫÕȬõȭȮȰȯȱYȲyȳGḠgḡḶḸḷḹṚṜṛṝ",
        ['\u0306'] = "AĂaăEĔeĕGĞgğIĬiĭOŎoŏUŬuŭȨḜȩḝẠẶạặ",
        ['\u0307'] = "CĊcċEĖeėGĠgġIİZŻzżAȦaȧOȮoȯBḂbḃDḊdḋFḞfḟHḢhḣMṀmṁNṄnṅPṖpṗRṘrṙSṠsṡŚṤśṥŠṦšṧṢṨṣṩTṪtṫWẆwẇXẊxẋYẎyẏſẛ",
        ['\u0308'] = "AÄEËIÏOÖUÜaäeëiïoöuüyÿYŸHḦhḧÕṎõṏŪṺūṻWẄwẅXẌxẍtẗ",
        ['\u0309'] = "AẢaảÂẨâẩĂẲăẳEẺeẻÊỂêểIỈiỉOỎoỏÔỔôổƠỞơởUỦuủƯỬưửYỶyỷ",
        ['\u030A'] = "AÅaåUŮuůwẘyẙ",
        ['\u030B'] = "OŐoőUŰuű",
        ['\u030C'] = "CČcčDĎdďEĚeěLĽlľNŇnňRŘrřSŠsšTŤtťZŽzžAǍaǎIǏiǐOǑoǒUǓuǔÜǙüǚGǦgǧKǨkǩƷǮʒǯjǰHȞhȟ",
        ['\u030F'] = "AȀaȁEȄeȅIȈiȉOȌoȍRȐrȑUȔuȕ",
        ['\u0311'] = "AȂaȃEȆeȇIȊiȋOȎoȏRȒrȓUȖuȗ",
        ['\u031B'] = "OƠoơUƯuư",
        ['\u0323'] = "BḄbḅDḌdḍHḤhḥKḲkḳLḶlḷMṂmṃNṆnṇRṚrṛSṢsṣTṬtṭVṾvṿWẈwẉZẒzẓAẠaạEẸeẹIỊiịOỌoọƠỢơợUỤuụƯỰưựYỴyỵ",
        ['\u0324'] = "UṲuṳ",
        ['\u0325'] = "AḀaḁ",
        ['\u0326'] = "SȘsșTȚtț",
        ['\u0327'] = "CÇcçGĢgģKĶkķLĻlļNŅnņRŖrŗSŞsşTŢtţEȨeȩDḐdḑHḨhḩ",
        ['\u0328'] = "AĄaąEĘeęIĮiįUŲuųOǪoǫ",
        ['\u032D'] = "DḒdḓEḘeḙLḼlḽNṊnṋTṰtṱUṶuṷ",
        ['\u032E'] = "HḪhḫ",
        ['\u0330'] = "EḚeḛIḬiḭUṴuṵ",
        ['\u0331'] = "BḆbḇDḎdḏKḴkḵLḺlḻNṈnṉRṞrṟTṮtṯZẔzẕhẖ",
    }.ToFrozenDictionary();

    /// <summary>The text with letters and accents put together.</summary>
    /// <param name="text">Any text.</param>
    public static string Join(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (!text.AsSpan().ContainsAnyInRange('\u0300', '\u036F'))
        {
            return text;
        }

        var joined = new StringBuilder(text.Length);
        foreach (var letter in text)
        {
            if (joined.Length > 0 && With(joined[^1], letter) is { } composed)
            {
                joined[^1] = composed;
            }
            else
            {
                joined.Append(letter);
            }
        }

        return joined.ToString();
    }

    private static char? With(char letter, char accent)
    {
        if (!s_pairs.TryGetValue(accent, out var pairs))
        {
            return null;
        }

        for (var i = 0; i < pairs.Length; i += 2)
        {
            if (pairs[i] == letter)
            {
                return pairs[i + 1];
            }
        }

        return null;
    }
}
