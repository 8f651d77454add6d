package prose

import "strings"

// verbs are verbs of the workshop, as an instruction begins with them. The list
// need not be whole: what is on it is a verb, what is not on it may be one.
var verbs = set(`
	add adjust advance agree aim align allow anneal answer apply arrange ask assemble attach avoid
	back balance bar barrier bathe be bear bed begin bend bind blank bleed blend blow bolt boil bond bore brace brake break
	bridge bring brush build bump burn burnish bush butt button
	calculate calibrate call cap carry cast catch centre center chain chalk chamfer change charge chase check chill chock choose
	circle clamp clean clear click climb clip clock close coat coil collect come compare complete compress confirm connect
	consult continue cool copy correct count counterbore countersink couple cover crank crimp cross crush cup cure cut cycle
	damp date deburr decide deflate degrease deglaze depress desolder detach determine dial dip disassemble discard discharge
	disconnect disengage dismantle dispose divide do double dowel drain draw dress drift drill drip drive drop dry dust
	earth ease eject elevate empty enclose engage enlarge ensure enter erect examine exchange expand expect expel extend extract
	face fasten feed feel fetch file fill filter find finish fire fit fix flare flatten flex flip float flood flush fold follow
	force free
	gather gauge get give glaze glue go grasp grease grind grip ground guard guide
	hammer hand handle hang heat help hinge hit hoist hold hone hook hose
	identify ignite immerse increase indicate inflate inject insert inspect install insulate interlock invert isolate
	jack jam jog join judge jump keep key knock knurl
	label lap lash latch lay lead lean leave lengthen let level lever lift light limit line link listen load locate lock log look
	loop loosen loop lower lubricate lug
	machine make mark mask mate match measure meet melt mesh mill mind mix moisten mount mouth move multiply
	nail narrow neutralise neutralize nip note notch number nudge nut
	observe obtain offer oil open operate orient orientate overhaul overlap
	pack pad paint part pass paste pat peel peen peg perform phone pick pierce pin pinch pipe place plane plug plumb point polish
	position post pour power preheat preload prepare press pressurise pressurize prevent prick prime print prise prize prop protect
	prove pry pull pump punch purge push put
	quench question raise raise ram ratchet reach read realign ream reassemble reattach recheck reclaim recognise recognize reconnect
	record rectify reduce refill refit refuse reinstall release relieve remeasure remember remove renew repeat replace replenish
	report reposition reseal reseat reset rest restore restrain retain retighten retorque retract retrieve return reverse revolve
	rewire ride ring rinse rivet rock roll rotate roughen route rub run
	safety sand save saw say scrape screw scribe scrub scuff seal seat secure see seize select send separate serve service set
	settle shake shape share sharpen shave shear shield shift shim shine shorten show shrink shut sign silence sink sit size
	skim slack slacken sleeve slide sling slip slit slot slow smear smell smooth snap snip snug soak solder sort sound space span
	spin splash splay splice split spot spray spread spring square squeeze squirt stack stage stake stamp stand start state stay
	steady steam steer step stick stir stop store stow straighten strap stretch strike string strip stroke strop stub stuff
	subtract suck support suspend swab swage sweep swing switch swivel
	tack tag take tally tap tape taper teach tear tell temper tension test thaw thin think thread throttle throw tick tidy tie
	tighten tilt time tin tip torque touch tow trace track train transfer transport trap treat trial trickle trim trip true try
	tuck tug tune turn twist type
	unbolt unbox uncap unclamp unclip uncoil uncouple uncover undo unfasten unfold unhook unload unlock unpack unplug unroll unscrew
	unseal unseat untie unwind unwrap upend use
	vacuum varnish vent ventilate verify vibrate view visit
	wait walk warm wash watch water wax wear wedge weigh weld wet wheel widen wind wipe wire wiggle withdraw work wrap wrench wring write
	zero zip`)

// nouns are those of the verbs that stand as often for a thing or for the doing:
// after "and" or before "of" they are no verbs by themselves.
var nouns = set(`
	back balance bar bed bend bleed bolt bond bore brace brake break bridge brush bush button cap cast catch centre center chain
	chamfer change charge check chock circle clamp clean clear clip clock coat coil cool copy count couple cover crank crimp
	cross cup cure cut cycle date dial dip dowel drain dress drift drill drip drive drop dry dust earth face feed file fill
	filter finish fire fit float flush fold force free gauge glue grease grip ground guard guide hammer hand handle heat help
	hinge hoist hold hook hose jack jam join joint key knurl label lap latch lay lead level lever lift light limit line link
	load lock log look loop machine mark mask match measure mesh mill mount mouth nail notch number nut oil open pack pad paint
	part pass paste peg pick pin pinch pipe place plane plug point polish position post power preload press prick prime print
	prop pull pump punch push quench ratchet record rest return reverse ring rivet rock roll route run safety sand saw screw
	seal seat seize set shake shape share shear shield shift shim show sign sink size skim slack sleeve slide sling slip slit
	slot smell smooth snap snug sound space span spin splash split spot spray spread spring square stack stage stake stamp stand
	start state stay steam step stick stop store strap stretch string strip stroke stub support swab sweep swing switch swivel
	tag tap tape taper tension test thread throttle tick tie time tin tip torque touch tow trace track train trap treat trial
	trim trip try turn twist type use vent view wait walk wash watch water wax wedge weld wet wheel wind wipe wire work wrap
	wrench`)

// articles begin the name of a thing or stand for it.
var articles = set(`a an the this that these those it its they their there you your we our he she his her i
	each every all both any some no none many most several`)

// things are things of the workshop that are no verbs.
var things = set(`
	axle barrel bearing bellows belt bench block body bonnet box bracket bushing camshaft carburettor carrier case casing
	chassis circlip clearance clutch collar component compressor condition conrod coupling crankcase crankshaft cylinder
	deck diameter diaphragm differential dimension direction elbow end engine fastener fitting flange flywheel frame fuel gap
	gasket gear gearbox generator gland governor gudgeon head housing hub ignition impeller indicator injector inlet inner
	instrument journal left lining locknut lubricant lubrication magneto main manifold manual method motor nozzle operation order outer outlet o-ring
	packing pinion piston pressure procedure pulley purpose quantity radiator rear reading reason requirement result rod rotor runner
	sealant shaft shell side spacer specification spigot spindle sprocket stator stud subassembly sump surface tachometer tank
	temperature terminal thermostat top tube turbine upper valve vane voltage washer weight winding yoke
	attention caution critical danger essential general important mandatory necessary notice optional warning`)

// endings are those of words that name a doing or a quality.
var endings = []string{"tion", "sion", "ment", "ness", "ance", "ence", "ility", "ivity", "ology"}

// withEnding are verbs, or words that may be, in spite of their ending.
var withEnding = set(`
	position mention question condition function caution transition reposition proportion station ration portion section petition
	action auction partition tension pension cement implement supplement document augment experiment comment torment ferment segment
	fragment increment decrement compliment complement balance advance enhance glance lance dance finance distance fence sequence
	influence reference commence silence evidence experience witness harness business prance trance chance stance instance apportion
	commission provision vision envision moment foment lament regiment detriment pigment
	entrance`)

// notGerunds end in -ing all the same.
var notGerunds = set(`bring ring string spring sling swing sting wring fling cling ping wing king sing thing something nothing anything everything during`)

func set(words string) map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(words) {
		m[w] = true
	}
	return m
}

// Verb reports a word that an instruction may begin with: "tighten", "re-fit".
func Verb(word string) bool {
	if verbs[word] {
		return true
	}
	if i := strings.LastIndexByte(word, '-'); i >= 0 { // trial-fit, re-tighten, hand-start
		return verbs[word[i+1:]]
	}
	return len(word) > 4 && strings.HasPrefix(word, "re") && verbs[word[2:]]
}

// NounToo reports a verb that is a noun or adjective as well.
func NounToo(word string) bool { return nouns[word] }
