using System.Collections.Frozen;

namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>
/// Common words of no meaning to this trade that lie one slip away from words that have one ("bridge", "fridge").
/// </summary>
internal static class EverydayWords
{
    private static readonly FrozenSet<string> All = """
        able add age ago ask bad bag ball bank bar base bath beach bean bear beat bed beer bell best bet bill bird
        birthday bit blah blue boat book bore bored born boss bottle bottom bought boy brain bread brother brown build
        busy buy cake camera cancel candy care cash cat chair chat cheap chicken child city class clean clothes coat
        coffee cold color company cook cookie cost count country cousin crazy cry cup dad dance dark date daughter
        dead deal dear deep delivery dentist dinner doctor dog dollar door draw dream dress drink drive driver driving
        early earn eat egg email english essay eye face fall family famous farm father feet fight film finger fish
        flag flat flight floor flower fly food foot football forget fork forward four france friend fruit fun funny
        game garden gift girl glad glass goal gold golf grandma grass great green ground group grow guess hair half
        hand happy hard hat hate head health hear heart heavy help holiday home honest hope horse hospital hotel hour
        house hungry husband idea idiot insurance internet island job joke jump juice key kid kids king kiss kitchen
        knife lady lake language late laugh law lawn lawyer lazy leave lemon lesson letter life light lime list live
        loan lock lol lonely lose lost love lower luck lunch market marry match math meal mean meat meet menu message
        milk mind minute miss money moon morning mother mountain mouse mouth movie mow mower music name nice night
        noon north nose number nurse office oil opening order owner page pain paint pants paper parent park party pass
        password pay pen pencil people pepper person pet phone photo pie pill pizza plane plant plate play player
        please poem police poor post potato pray present president price prince prize puppy queen question quick race
        radio rain recipe red refund rent restaurant rice ring river road rock roof root rose round rule sad salad
        salary sale salt sand school science sea season seat secret send shirt shoe shoes shop shopping sick silly
        sing sister size skin sky sleep slow smart smile snow soap soccer sock son song soon sorry soup south speak
        spell sport star station stay steak stock stomach story street student stupid subscription suck sugar suit
        summer sun sweet swim table tail talk tall tax tea teach teacher team teeth theater thirsty ticket tie tired
        tomato tomorrow tooth tooth tour town toy train travel tree trip trouble truck trust ugly uncle useless
        vacation vote wait walk wall war warranty wear weather wedding weekend weird welcome west wine winter wish
        woman wonder wood word work world worse worst write wrote yard young zoo human agent operator manager price
        prices store stores invoice appointment schedule speak someone capital bake ice screen battle blanket bridge
        fan funny god hell damn shit fuck fucking asshole about across act actually add admit advice afraid after
        again air airport album alive allow alone along already although amaze among angry animal answer apple argue
        arm arrive art article artist ask asleep aunt author avoid award baby ban band basic basket bear become before
        began begin behave belief belong bend beside best better between beyond bid bind bite bitter blame bless blind
        blood board body boil bomb bone bonus border borrow bother bow box brave break breath bring broad buddy budget
        burst bus button calm came can carry carve catch cause cease celebrate center certain chain chance charm chase
        cheat cheese cheer choose church circle claim clever client climb cloud club coach coast code comfort comment
        common complain complete concern confirm connect consider contact contain contest continue contract cool copy
        corner correct could cover crash create credit crime cross crowd damage danger deliver demand deny depend
        desert desk detail develop device die diet difference dirt discuss dish dispute divide doubt dozen drag drama
        drop drug dry due duty each ear earth ease easy edge effect effort either empty end enemy enjoy enough enter
        equal error even event ever exact except excite excuse exist expect explain express extra fact fail fair fake
        false fan far fashion fate fear feed feel fence few field figure file fill final fine firm fit fix flash float
        flood flow focus follow fool force form found frame free fresh front full gain gate gather gentle grab grade
        grand grant gray guard guide guilty gun gym habit handle hang harm haste heal heaven height hide hill hint
        history hit hold hole hop host huge human humor hunt hurry hurt image imagine include income indeed inform
        inside insist install instead invite iron issue item jacket join judge just keen kick kill kind knee knock
        land large last latest lead leaf learn least leg legal lend level library lie lift like limit link lip little
        loan local long loud loyal lunch magic main major manage mark mask master matter maybe member memory mend mess
        metal middle might mild mix model modern month mood mostly motion move much museum nail narrow nation nature
        near neat need nerve never news next noise none normal notice novel obvious offer often older once onion only
        open opinion option orange ordinary other outside oven over own pack pair palace panic part partner past path
        patient pattern peace peak percent perfect permit phase pick picture piece pile pilot pin pipe pity place
        plain plan plastic plenty pocket point polish polite pool popular port possible pot pound pour power practice
        praise prefer prepare press pretty prevent print prison private problem process produce promise proof proper
        protect proud prove provide public pull pump punch pure push quality quarter quiet quit quite rabbit raise
        range rank rare rate rather reach react read ready real reason receive recent record reduce refuse regard
        region regret relate relax release rely remain remember remind remove repair repeat replace reply report
        request rescue rest result return reveal reward rich ride right rise risk rival roll room rough round route
        row royal rub rude ruin rush safe sail same sample sand satisfy sauce save scale scare scene scope score
        scream search secure seed seek seem select sell sense separate serious serve service set settle several shade
        shake shall shame shape share sharp sheet shelf shell shine ship shock shoot short should shoulder shout show
        shut shy side sight sign silence silk silver similar simple since sing single site sit situation sixty skill
        skip slave slice slide slight slip slope small smell smoke smooth snake social soft soil solid solve some sort
        soul sound source spare special spend spin spirit split spoil spot spray spread spring square stable staff
        stage stair stamp stand start state statue steady steal steam steel step stick stiff still stone stop storm
        story strange stream strength stress stretch strict strike string strong struggle studio style subject succeed
        such sudden suffer suggest supply support suppose sure surface surprise survive swallow swear sweep switch
        symbol system take tank tap tape target task taste teach tear tell temper tend tent term test thank theme then
        theory thick thin thing think though thought thread threat throat through throw thumb tide tight time tin tiny
        tip title today together tone tongue tool top topic total touch tough toward trace track trade trap tray treat
        trend trial trick true try tube tune turn twice twin twist type uncle under unit unless until upon upset urge
        use useful usual value various vast vehicle version very victim view village visit voice volume wake wander
        warm warn wash waste watch water wave weak wealth week weight well wheel while whisper whole why wide wild
        will wind window wing wipe wire wise wonder would wrap wrist wrong yell yellow yet zero zone hello hi hey hola
        bonjour guten tag danke gracias merci por que para con los las una este esta como der die das und ist nicht
        mein meine kein keine ein eine wir ihr est pas mon les des une avec sur ne ce il lo non che del della per sono
        nao esta meu minha como ola buenos dias buenas tardes ciao crap dumb moron junk trash garbage piece suck sucks
        suspect blame reckon condemn assume convince diagnose believe swear insist guess figure
        swore sworn march april june july august november october september december january february monday tuesday thursday
        worm worms noting noted leaflet brochure poster keeper goalie disgrace logger glad curious opposite apparently anyhow
        somehow somewhere nobody everybody besides meanwhile moreover hence nearly barely mainly rarely shortly recently lately
        finally suddenly quickly slowly properly plainly honestly sadly luckily hopefully obviously clearly exactly merely
        rather quiet afternoon evening tonight weekday weekly monthly yearly brother neighbour neighbor landlord caretaker
        apprentice foreman gaffer fitter plumber painter decorator builder roofer sparky spark electrician carpenter
        balcony patio terrace attic cellar basement hallway corridor bathroom stairs stairwell cupboard bungalow
        riddle proverb lyrics verse chapter novel hero villain wizard dragon castle knight sword riding saddle
        absolute ratio rag rags trunk grille sash conservatory bungalow towel sponge bucket mop broom brush hedge fence shed barn stable gravel
        cement plaster brick lint pollen dust lodge tavern bakery butcher grocer salon barber clinic surgery nursery crew squad rota
        harness padlock leaflet certificate calendar diary ledger receipt voucher coupon parcel courier freight pallet forklift
        blizzard sleet drizzle thunder hail breeze heatwave holiday bank weekend lunch supper snack biscuit sandwich kettle mug
        puppy kitten rabbit hamster parrot pigeon seagull wasp beetle spider hedgehog squirrel badger farmer chef waiter pupil
        lecture seminar exam diploma degree thesis essay chapter poem rhyme lyric melody guitar piano violin drum trumpet
        marathon cricket rugby tennis hockey boxing racing betting lottery casino jackpot poker chess puzzle crossword
        divorce funeral christening baptism anniversary graduation retirement pension mortgage savings deposit withdrawal
        passport visa embassy customs luggage suitcase hostel cruise ferry harbour harbor airport runway platform carriage
        algebra geometry fraction percentage decimal equation molecule atom planet galaxy comet gravity
        recommend recommended advise advice opinion review rating stars feedback complaint apology
        bot robot chatbot assistant hire fire fired
        """.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).ToFrozenSet(StringComparer.Ordinal);

    private static readonly string[] Endings = ["ing", "ed", "s", "es", "er", "ly"];

    /// <summary>Whether it is such a word, or a common ending of one.</summary>
    public static bool Contains(string word) =>
        All.Contains(word)
        || Endings.Any(ending => word.Length > ending.Length + 2 && word.EndsWith(ending, StringComparison.Ordinal)
            && IsStem(word[..^ending.Length]));

    private static bool IsStem(string stem) =>
        All.Contains(stem) || All.Contains(stem + "e")
            || (stem.Length > 3 && stem[^1] == stem[^2] && All.Contains(stem[..^1]));
}
