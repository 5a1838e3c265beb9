import type { LabelReader } from "../../types";

/** Said plainly in the same text, the tie is disclosed. */
const PLAIN = "paid_partnership|paid_promotion|paid_me|pays_me|paid_us|paid_to|paying_me|ad:|ad_break|#ad|is_an_ad|an_advert|advert|advertisement|advertising|sponsored|sponsor%|affiliate|gifted|was_a_gift|i_earn|i_get_a_commission|earn_a_commission|commission|is_paid|paid_for_this|they_pay|bought_it_myself|bought_them_myself|my_own_money|paid_for_it_myself|i_paid_full";
const NO_TIE = "no_code|no_link|no_discount|without_a_code|no_freebies|dress_code|postcode|door_code|code_of|door|gate|locker|colour_code";

/** A seller is praised with a sign of a tie, and nobody says so. */
export const disclosureMissing: LabelReader = {
  label: "disclosure-missing",
  ruling: "A product is praised with a sign of a favour behind it and no plain word that it is paid, gifted or affiliate.",
  patterns: [
    { find: "use|with|type|enter|quote|say|the code|discount_code|promo_code|voucher|coupon", as: "flat", with: "off|discount|save|saves|checkout|till|cheaper|free|percent|per_cent|basket|order|buy|shop", without: `${PLAIN}|${NO_TIE}`, family: "general", example: "Enter the code at the checkout and save." },
    { find: "off|discount|cheaper|save|saves ~4 my|our link|name|channel", as: "flat", without: `${PLAIN}|${NO_TIE}`, family: "general", example: "Fifteen per cent off with my link." },
    { find: "my|our|discount|promo code%|discount_code|promo_code|voucher|coupon", as: "flat", without: `${PLAIN}|${NO_TIE}`, family: "general", example: "Use my code at the checkout." },
    { find: "code|type|use|enter|quote|say|mention|name my|the|in|name ~3 checkout|till|off|discount|save|cheaper|at", as: "flat", without: `${PLAIN}|${NO_TIE}|feet|hands|foot|breath|cash`, with: "off|discount|save|saves|saving|cheaper|code|percent|per_cent|free", family: "general", example: "Type my name at the till and save ten percent." },
    { find: "link in|below|under|down|is ~2", as: "flat", with: "get|grab|buy|order|pick_up|same|code|discount|off|cheaper|shop|store|love|favourite|best", without: `${PLAIN}|${NO_TIE}|plan|handout|timestamps|chapters|programme|program|playlist|study|video`, family: "general", example: "Grab the same belt, link below." },
    { find: "sent|gave|given|posted|dropped|left|shipped|lent|handed me|us|him|her|my_way|on_my_doorstep|a ~8", as: "flat", with: "love|loving|amazing|brilliant|great|best|need|wow|get|grab|try|favourite|fantastic|recommend|gorgeous|obsessed|game-changer|buy|worth|comfiest|perfect", without: `${PLAIN}|${NO_TIE}|coach_gave|gave_me_pain|sent_in|sent_me_a_question|gave_me_a_cue|gave_me_a_tip|viewer%|gave_me_confidence|free_weights`, only: ["general", "cable", "carry", "kettlebell-swing", "mobility-warmup", "vertical-pull", "row", "squat", "horizontal-press", "core", "cooldown-stretch", "hinge"], family: "general", example: "They sent me these straps and I love them." },
    { find: "told|promised|agreed|said ~4 i'd|i_would|we'd|to ~1 mention|say|plug|shout_out|name|wear|show|talk_about|hold_up", as: "flat", without: `${PLAIN}|physio|doctor`, family: "general", example: "I told them I'd mention the shoes." },
    { find: "friends|mates|pals|lads|folks|lovely_people|good_people at|from|over_at ~3", as: "flat", with: "code|off|free|discount|sorted|hooked|looked_after|sent|cheaper|deal|kitted|box|treat|crate|parcel", without: `${PLAIN}|${NO_TIE}`, family: "general", example: "My friends at the shop sorted me out with a free belt." },
    { find: "not_an_ad|isn't_an_ad|no_ad|not_sponsored|don't_bother_with|ad_labels|ad_label|no_need_to_label|not_going_to_label|don't_have_to_tell", as: "flat", with: "sent|free|gave|code|discount|type|box|love|keep|box|present|paid|cheaper|save|deal|lets_me|trained", without: "bought|own_money", family: "general", example: "Not an ad, they just gave me a free year." },
    { find: "hooked_me_up|sorted_me_out|looked_after_me|kitted_me_out|kits_me_out|owe_them_one|returning_a_favour|return_the_favour|fill_my_cupboard|free_for_life|keep_me_in|keeps_me_in|on_the_house", as: "flat", without: PLAIN, family: "general", example: "The shop hooked me up with these." },
    { find: "cheaper|discount|off|deal|free|saving if|for|when you|viewers|my|our|mention|say|type|followers|subscribers|quote ~4", as: "flat", without: `${PLAIN}|${NO_TIE}|floor|pad|bench|hands|feel|weight|breath|rest`, with: "buy|at|order|type|code|mention|name|viewers|followers|subscribers|shop|store", family: "general", example: "It's cheaper if you mention my channel at the shop." },
    { find: "<tie> &.20 <lovely>", as: "flat", without: `${PLAIN}|${NO_TIE}|coach|my_own_pocket|physio|viewer_sent|full_price`, family: "mobility-warmup", example: "Best roller I own, tap the link for free postage." },
    { find: "<gift> &.16 <lovely>", as: "flat", without: `${PLAIN}|${NO_TIE}|coach|my_own_pocket|physio|viewer_sent|full_price`, family: "hinge", example: "They send me a belt every month and I love it." },
    { find: "<noad> &.22 <tie>|<gift>|<lovely>", as: "flat", without: `${PLAIN}|${NO_TIE}|coach|my_own_pocket|physio|viewer_sent|full_price`, family: "general", example: "I don't do adverts, I just love the mat they let me keep." },
    { find: "code|coupon|voucher &.14 saves|off|cheaper|discount|checkout|knocks|gets_you|half|takes|is_great|is_perfect|best", as: "flat", without: `${PLAIN}|${NO_TIE}|coach|my_own_pocket|physio|viewer_sent|full_price`, family: "general", example: "It's perfect and the code saves you five." },
  ],
  silent: [
    { text: "Ad: the oats are free samples from Pennyloaf, and the code is OATS.", family: "general" },
    { text: "I bought these straps myself and like them.", family: "general" },
    { text: "The plan is in the link below.", family: "general" },
    { text: "Any sturdy box will do.", family: "plyometric" },
    { text: "Paid partnership with Pennyloaf: they sent me the bands.", family: "general" },
    { text: "Gifted: they sent me the roller, and I love it.", family: "general" },
    { text: "I love a broom handle; any will do.", family: "general" },
  ],
};
