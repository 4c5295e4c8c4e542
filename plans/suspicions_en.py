"""Which words usually go with which warning sign. Written by `python -m tests.bench.doubting`, not by hand."""

WEIGHTS = """
! 6 -5 -3 -2; !> 4 -1 -2 -2; # 5 -1 -2 -3; #> 3 -1 -2 -3; % 7 -4 -2 -1; %> 4 -1 -2 -1; & 1 -5 4 -6; ( 3
-2 0 -1; ) 5 -4 -1 -1; )> 3 -1 -1 -2; + 6 -5 -3 -2; , 2 -1 0 -1; ,> 8 -6 -4 -6; - 7 -4 -1 -1; . 2 -1 -2
-1; .> 5 -1 -2 -4; / 5 1 -3 -3; 3 -5 5 -4 -3; 5:30 4 -1 0 -2; 5:45 7 -6 -2 -3; 6 1 0 0 -1; 6:15 4 -4 -1
-2; 6:30 4 -4 -3 -4; 6:45 2 -1 0 0; 7:30 6 -3 -1 -3; : 6 -3 -1 -2; :> 4 -1 -1 -2; <! 6 -3 -2 -2; <# 1 -3
0 -7; <, 8 -3 -6 -4; <- 2 -1 0 0; <. 9 -5 -3 -5; <: 5 -2 -2 -2; <? 8 -3 -4 -1; <a 2 -10 -2 -1; <about 8
-7 -3 -5; <aching 4 -3 -1 -3; <achy 6 -7 -1 -2; <affirmative 7 -2 -3 -6; <after 2 -8 -11 0; <again 7 -7
-9 -4; <all 7 -2 -9 -2; <almost 8 -6 -2 0; <already 4 -11 -10 -2; <alright 4 -3 -4 -3; <am 5 -6 -4 -3;
<an 0 0 -1 1; <and 9 -8 -3 -6; <ankle -6 -6 6 -4; <ants 0 5 -4 -4; <anymore 6 -5 -4 -4; <arm 1 2 -4 -13;
<as 6 -5 0 0; <asdkjh 5 -5 -5 -5; <at 2 0 -5 -7; <aye 4 -4 -5 -4; <baby 4 -2 -1 -2; <back 4 0 -1 -5; <bar
2 0 0 0; <became 3 -8 -9 -4; <because 3 -2 -6 -4; <been 12 -11 -3 -8; <before 5 -3 -5 -7; <bet 4 -3 -4
-3; <better 4 -2 -1 -1; <between 2 -7 -1 -1; <big -2 -5 3 -1; <bit 4 -2 -1 -4; <bits 8 -4 -7 -8; <black
-12 -3 6 -4; <blacked -6 -4 -2 4; <bladder -4 -3 -3 5; <blurred -6 -5 -2 7; <body 3 -1 0 -2; <bonjour 2
-2 0 0; <boss 3 -3 -5 -1; <both -2 2 2 -6; <breathtaking 3 -2 -2 -2; <bro 1 -3 -3 -1; <broke 4 -5 -5 -3;
<bruh 5 -5 -4 -3; <bruise -4 -1 4 -1; <bruised -6 -6 7 -4; <burned 2 -1 -1 0; <burning -14 7 -6 1; <bus 2
-1 0 0; <busy 3 -1 -2 -2; <but 7 -4 -8 -3; <buttock 5 -6 0 2; <by 6 -3 -2 -3; <calf -2 -6 3 -2; <calves 6
-4 -1 -4; <can -4 1 -1 -2; <cancel 4 -4 -4 -4; <cba 3 0 -2 -1; <change 3 -2 0 -1; <chest -1 -5 -4 2;
<coach -1 -4 0 0; <complete 10 -7 -1 -1; <completed 7 -4 -2 -5; <completely 7 -6 -1 -2; <cooked 4 -2 0
-2; <could 3 1 1 -5; <covid 8 -4 -2 -6; <day 3 -2 -2 0; <dead 11 -15 -2 -2; <dear 7 -4 -4 -1; <did 6 -4
-1 0; <dizzy -8 8 -1 -2; <do 2 -3 -3 -2; <doctor -2 -9 0 4; <dog 8 -2 -11 -3; <doing 7 -4 -6 -3; <doms 4
-1 -3 -3; <done 3 -2 -2 0; <double -2 0 -3 2; <down 10 -6 -3 -4; <dropped 2 -7 0 -6; <drove 0 2 -3 -2;
<dull 6 -3 -2 -1; <dun 5 -4 -3 -3; <during 3 -5 -1 -10; <dying 2 0 -1 0; <easy 5 -1 -2 -1; <effort 4 -3
-2 -1; <electric -4 5 -6 -2; <evening 8 -2 -5 -4; <ever -3 -1 -6 2; <every 8 -7 -2 -3; <everything 0 -1
-5 -3; <exam 5 -4 0 -1; <except 6 -3 -2 -5; <exercise 4 -2 -2 -2; <exercises 3 -1 -3 0; <ez 3 -2 -3 -2;
<face -7 -3 -5 7; <fainted -9 -4 -2 9; <feel 5 -9 -1 5; <feeling 1 0 -1 -6; <felt 2 -3 1 -8; <fever -8 -2
3 -6; <feverish -8 8 -3 -4; <finally 2 -1 0 0; <fine 7 -3 -2 -2; <fingers -12 12 -5 -4; <finish -1 -4 -3
0; <finished 4 -4 -4 -1; <finito 6 -4 -4 -4; <first 6 -5 -1 -4; <flu 4 -2 -2 -2; <food 6 -2 0 -4; <foot 2
-1 -6 -6; <for 9 -4 -2 -3; <forgot 4 -3 -2 -1; <fr 5 -3 -2 -1; <from 6 -4 -3 -11; <gave 9 -2 -9 -2; <get
3 -2 -2 -5; <going 11 -1 -4 -10; <gone 7 -7 -6 -8; <good 4 -2 -1 -2; <got 2 -4 -3 -7; <great 3 -1 -1 -1;
<groin 1 -13 -5 1; <guests 4 0 -1 -3; <guten 3 0 -1 -2; <had 3 -1 -2 -5; <haha 3 -3 -3 -3; <half 7 -9 -5
-2; <halfway 7 -7 -5 -2; <hamstring -1 -9 5 -4; <hamstrings 6 -5 -1 -1; <hand -6 5 0 -3; <hardly -2 -8 5
-7; <has 3 -5 -1 -6; <have 2 -5 -4 -4; <having 0 -4 -6 4; <head -2 2 -6 -1; <health 2 0 -1 -1; <heard -3
-1 4 0; <heart -3 -7 -4 5; <heavy 2 -3 -1 -2; <hecho 1 0 0 -1; <held 4 -3 0 -1; <hello 0 0 -4 -1; <here 4
-1 -3 -1; <hey 5 -1 -1 -4; <hi 5 -2 -6 -2; <hip 3 -3 -2 -5; <hips 6 -5 -2 -2; <hiya 6 -3 -3 -3; <honestly
1 0 -1 0; <hot 10 -13 2 -2; <how 13 -6 -5 -4; <hurts 3 -2 -7 -3; <i 1 -3 -1 -1; <ich 4 -1 -1 -1; <idk 4
-4 -4 -3; <ill 5 -1 -3 -2; <in 8 1 -5 -15; <inbox 3 -3 -2 -2; <is -5 -1 2 -7; <it 4 -3 -4 -5; <ja 4 -3 -1
-1; <jaw -15 -7 -8 13; <just 1 2 1 -6; <k 3 -3 -3 -3; <kid 5 -3 -1 -1; <kids 1 0 0 0; <kinda 9 -2 -3 -4;
<kindly 7 -3 -2 -3; <knee 5 -4 -2 -6; <knees 9 -9 -2 -3; <l 4 -2 -4 -1; <last 1 0 -8 -2; <late 3 -2 -1 0;
<later 8 -3 -3 -2; <left 2 -9 -3 0; <leg 2 -2 -1 -8; <legs 1 5 -4 -14; <less 4 -2 -1 0; <light -10 5 -3
-3; <lighter 7 -3 -7 -1; <like -9 4 -1 -2; <little 0 1 -1 0; <load 4 0 -3 -1; <lol 7 -5 -4 -2; <long 1 -1
-1 0; <lost 0 -1 -7 -2; <lovely 0 2 2 -6; <lowkey 2 -1 0 -1; <made 4 -1 -2 -2; <managed 7 -2 -1 -5; <mat
7 -1 -4 -2; <maybe 2 0 -8 -12; <me 10 -9 -10 -5; <might 3 -2 -3 -3; <migraine 7 -1 -2 -4; <missed 3 -2 0
-1; <more 6 -3 -2 -2; <morning 4 -5 0 -3; <most 6 -2 -2 -2; <move 5 -5 -4 -1; <mum 7 -4 -5 -3; <muscle 2
0 -1 0; <must 10 -3 -8 -10; <my 1 -4 -4 3; <nah 4 -4 -3 -3; <nearly 4 -6 -6 -2; <neck 4 -1 -1 -2;
<neighbour 8 -2 -4 -4; <new -3 -1 -1 1; <next 3 -1 0 -2; <ngl 4 -1 -1 -2; <nice 2 -2 -2 -2; <night -10 12
-3 -4; <no 3 -3 -1 -6; <none 10 -8 -1 -2; <nope 6 -5 -2 -6; <not 12 -8 -3 -6; <nothing 7 -1 -1 -5;
<notice -3 5 -3 -4; <noticed -3 4 -1 -8; <now 5 -4 -7 -6; <numb -7 0 -8 6; <numbness -10 7 -8 -2; <of 9
-6 -10 -4; <ok 7 -6 -3 -2; <okay 5 -4 -1 -2; <omg 5 -5 4 -2; <on 6 -8 -4 2; <one -3 -7 2 0; <only 11 -6
-6 -5; <or 2 -2 -2 1; <ouch 5 -3 -3 -3; <oui 3 -3 -3 -2; <our 5 -3 -2 -1; <out 5 -6 -4 -4; <outer -1 8 -5
-1; <overslept 6 -2 -3 -1; <pain 4 -1 -5 -1; <palpitations -4 -8 -2 7; <parents -7 -3 3 -4; <part 8 -2 -5
-3; <partly 7 -3 -3 -3; <passed -6 -3 -5 5; <pause 7 -3 -2 -1; <phone 4 -3 0 -1; <physio 3 -3 -2 -5;
<pins 1 1 -4 -2; <played 0 -6 1 -4; <please 5 -2 -1 -2; <popped -6 -7 8 -3; <pose 3 -2 -1 0; <power 9 -2
-1 -7; <pressure -2 -5 -2 5; <pretty 3 -1 -1 -2; <probably 3 -3 -3 -3; <pulled -1 -6 2 -11; <put 3 -5 -3
-3; <quick 3 0 -3 0; <quit 3 -2 -2 -3; <qx 3 -9 -4 -4; <r 4 -5 -1 -1; <ran 5 -4 -1 -1; <reached 7 -7 -1
0; <really -3 -12 -7 6; <rehearsal 3 -2 0 -1; <rest 3 -1 -1 -1; <right -5 -6 -1 4; <room -7 8 -8 -9;
<routine 1 -2 0 2; <said 8 -4 -3 -2; <same 7 -5 -1 -1; <saw 2 -8 -9 1; <school 4 -3 -1 0; <session 7 -5
-1 -4; <set 8 -7 -4 -2; <severe -6 -4 3 1; <sharp 3 -8 8 -2; <shooting -6 6 -4 -4; <shorter 5 -3 -3 -2;
<shot 7 -3 -2 -3; <should 12 1 -5 -10; <shoulder -4 -2 6 -4; <show 4 -2 -2 0; <si 6 -5 -3 -2; <sick 3 -2
0 0; <since -1 -1 -5 0; <sir 5 -5 1 -2; <skipped 4 -3 -2 -3; <slept 16 -15 0 0; <slight 5 -4 -6 -5;
<slipped -2 0 2 -2; <slurred -4 -4 -1 8; <so 2 -6 -3 -1; <some 7 -16 3 -3; <something -1 -9 2 -2; <sore
11 -8 -3 -1; <soreness 2 -5 4 -4; <sorry 6 -1 -2 -4; <sorted 3 -3 -3 -3; <speech 1 -1 -2 -1; <spent 4 0
-1 -3; <squeezing -2 -2 -3 3; <started 10 -5 -1 -5; <stiff 4 -1 -2 -1; <stiffness 1 0 -1 0; <still 7 -5
-4 -12; <stomach 3 -2 -3 -1; <stop 14 -8 -5 -3; <stopped 5 -8 -2 -1; <stretch 4 -3 -2 0; <stretches 5 -5
-1 -2; <sudden -4 -9 -5 8; <suddenly 1 -4 -1 1; <swamped 2 -1 -1 0; <swollen -5 -1 7 -1; <take 3 -2 -4
-1; <teacher 8 -2 -5 -7; <ten 9 -8 -4 -3; <tender 5 -4 -4 -1; <thank 4 0 -1 -3; <thanks 7 -3 -2 -2; <that
9 -2 -1 -6; <the 3 -5 -2 -4; <there 0 0 -1 -6; <thigh -7 -9 14 -2; <thing 8 -8 -6 -4; <this 4 1 -6 -7;
<thought 7 -1 -4 -5; <thread 1 -1 0 0; <three 4 -1 -1 -1; <threw 8 -6 -5 -4; <throbbing -5 -4 4 -2;
<tight 1 -2 -2 3; <tightness 2 -1 -1 0; <tingling -9 0 -4 3; <tingly -3 7 -4 -3; <to 0 1 -1 -2; <toast 6
-5 0 -1; <today 10 -7 -3 -6; <toes -4 4 -2 -3; <tomorrow 7 -2 -2 -4; <tonight 5 -3 -4 -3; <too 2 -5 2 -8;
<took 7 -2 -4 -2; <traffic 4 0 -4 0; <travelling 5 -1 -2 -1; <tried 8 0 -6 0; <twice 8 -1 -4 -4; <two 5
-3 -1 -3; <unbearable -8 -6 8 -5; <unsubscribe 4 -4 -5 -4; <up 0 1 -5 -3; <very 5 -3 -1 -2; <wakes -3 4
-4 -2; <walked 3 -3 -2 -2; <want 2 -2 -1 1; <was 4 -9 -5 0; <watched 2 -6 1 -1; <way 10 -9 -9 -8; <we 2
-1 0 -1; <weak -2 7 -5 -7; <weakness -9 6 -5 -4; <week 2 -1 -1 0; <weight 0 2 -11 -5; <well 7 -6 -2 -3;
<went 1 5 0 -14; <wet -12 -3 -3 5; <what -2 -4 1 -5; <when 1 -2 -2 -6; <where 6 0 0 -5; <which 5 -7 -5
-2; <while 6 -4 -5 -6; <who 7 -4 -5 -3; <whole 3 -4 -4 0; <why 10 -7 -6 -3; <wife 3 0 0 -3; <wifi 3 -3 -1
-2; <will 7 -2 -4 -1; <with -1 -3 -1 -4; <woke 1 2 -15 -9; <words -2 0 -2 3; <work 5 -3 -1 0; <worked 1 0
-1 0; <worse 9 -9 -5 -2; <xx 3 -1 -2 1; <yeah 6 -5 -4 -3; <yep 2 -5 -4 -2; <yes 4 -3 -2 -2; <yesterday 4
-4 0 -2; <you 3 -3 -3 2; <yup 8 -3 -2 -7; <zero 1 0 -1 0; <zilch 5 -4 -5 -4; <✅ 6 -4 -3 -5; <✔ 6 -4 -3
-3; <❌ 5 -3 -3 -3; <👌 3 -3 -3 -3; <👍 7 -3 -2 -2; <👎 5 -3 -3 -3; <💀 4 -4 -4 -3; <💪 5 -4 -4 -4; <🔥 3 -3 -3
-3; <😂 6 -3 -3 -3; <😴 3 -3 -3 -3; <🤒 5 -1 -2 -2; <🤷 6 -4 -5 -4; = 4 -2 -1 -1; ? 3 -2 -1 -6; ?> 2 -1 -2
-6; _ 12 -5 -4 -4; a -3 -1 -1 -2; a> -8 5 -8 1; ability 10 -2 -5 -4; able 1 -7 -2 3; about 4 -2 -5 -1;
about> -2 -3 -3 3; abs 2 -2 -1 -1; accident -7 -7 -5 7; ache 3 -1 -8 -6; aches 10 -3 -8 -2; aches> 1 0 -5
-2; achey 10 -10 -9 -8; achilles 3 -2 0 0; aching 7 -4 -8 -6; aching> 6 -5 -3 -2; achy 11 -4 -2 -5; achy>
6 -2 -3 0; across 6 -3 -4 -1; action 1 0 -1 0; actually 9 -7 0 -3; advanced 6 -1 -2 -3; af 4 0 -5 -2; af>
2 -1 0 0; affirmative 7 -2 -3 -6; afraid 6 -2 -2 -2; after -6 -2 -1 1; after> 1 -3 -3 -1; afternoon 0 -7
-3 1; afterwards -5 2 1 0; again -3 6 -5 -5; again> 1 -2 -4 -1; age -1 -15 -6 2; age> 8 -2 -1 -5; ago 0
-5 -5 4; ahce 5 -4 -3 -1; air -8 -9 -1 9; airport 7 -6 -1 -8; alarm 6 -2 0 -5; all -2 0 0 -1; all> 7 -5
-2 -9; almost -1 -6 -4 3; along -8 8 -2 -4; already 0 3 -6 -4; already> -5 5 -2 -7; alright 4 -3 -4 -3;
also -2 -3 0 3; also> -3 4 -6 -3; although 10 -4 -1 -8; always 1 2 -3 -2; always> 1 5 -1 -6; am -3 -1 -5
3; am> 0 1 -4 -7; amazing 6 -4 -5 -2; an -4 0 -1 1; and -5 2 0 2; and> 6 -5 -4 -13; ang 3 1 -1 -4; ankle
-9 -2 7 -12; ankle> 4 -3 -4 -2; ankles -7 -8 9 -3; another 5 -3 -3 -4; ants -7 9 -5 -7; any 1 -6 2 -6;
any> 11 -5 -7 -8; anymore 1 1 -3 -2; anymore> 5 -4 -3 -3; anything 1 -7 -9 5; anyway 1 -1 1 -4; anyway> 2
-1 -6 -4; anywhere 5 -3 -1 -2; apart 6 -6 -1 -4; app 6 -1 -1 -4; appointment 8 -6 -3 -5; appointment> 2 0
-1 -1; are 3 -1 -3 -4; are> -3 0 0 0; area 2 -7 -3 7; arm -11 4 -2 0; arm> -4 -1 3 -4; arms 4 -2 -2 -2;
arms> 3 -1 -1 -1; around -1 -9 -1 8; arrived 5 -2 -1 -2; arthritis 6 -6 -5 -3; as -6 8 -5 -4; asdkjh 5 -5
-5 -5; ask 7 0 -1 -6; asked 3 -3 -1 -3; asking 3 -5 0 -2; asleep -5 6 -7 -2; asleep> -1 7 -6 -11; at -2 1
-4 0; at> 1 0 0 -1; ate 7 -2 -3 -4; attic 0 3 -4 -1; aunt 1 -1 0 0; autocorrect 2 -1 0 -2; awake -7 7 -3
-2; away -7 0 5 -8; away> -3 4 -3 -5; awful -9 9 -3 -2; aye 4 0 -5 -7; baby 8 -7 -6 0; back -4 3 -2 -6;
back> -2 -3 2 -7; backs 8 -5 -1 -2; bad -5 -2 -16 2; bad> -3 -8 -3 3; badly -5 2 0 3; bags 1 -1 0 0;
bailed 8 -6 -5 -7; baked 1 2 0 -3; bakery -2 2 -1 -1; baking -1 2 1 -1; balance 7 -4 -6 -2; balcony 4 -3
-1 -4; ball -6 -5 7 -5; balloon -1 -6 5 -7; balloon> -4 -2 6 -5; balloons 6 -4 -3 0; band 5 -3 -3 -2;
bank 0 1 0 -3; bar 8 -3 -2 -7; barbecue 2 0 -1 0; bath 3 -3 -3 -4; bathroom -7 -7 -5 7; battery 4 -1 -1
-3; be 5 -1 3 -4; beach 3 -3 -2 -5; beans 2 -2 0 -2; bear -9 -6 8 -6; beat 3 -6 -5 0; beating -12 -1 3
11; beats -10 -2 -2 9; beats> -5 -3 -1 5; became -6 -2 -3 8; became> -1 6 -3 -4; because 4 -1 -3 -5;
become -3 5 -2 -4; bed 0 -1 -1 -3; bed> 5 -2 -2 -1; been -3 0 -5 -3; been> -4 1 -5 3; before -4 -3 -2 5;
before> -9 -1 -9 9; began 4 -5 -3 -1; beginning 5 -1 -2 -2; behind -7 -12 1 5; being 4 -3 -5 -4; believe
2 0 -5 -6; below -3 -14 0 3; bend -4 6 -5 -12; bend> 4 -3 -1 -6; bending -5 7 -4 -7; bending> -5 7 -4 -8;
bends 3 -4 -2 -3; bent -2 -1 0 2; best 2 -1 0 0; bet 4 -3 -4 -3; better 4 1 -4 -4; better> 10 -9 -5 -5;
between 4 -16 -2 14; beyond 4 -1 -3 -1; bicycle 2 1 -1 -4; big -4 1 6 -10; bigger -9 -2 9 -1; bike -2 -4
0 3; bill 3 -2 0 -3; bin 1 1 -1 -1; bins 3 -2 0 -1; birds 5 0 -3 -2; birthday -2 3 -6 -3; biryani 1 0 0
0; bit 1 -1 -9 0; bit> 1 -1 -3 -1; bits 5 -10 -4 4; black -9 -11 5 4; blacked -13 -5 -3 12; bladder -9
-12 -3 11; blanket 3 0 -3 0; bless 2 0 0 -1; block -3 4 -3 -6; blood 3 -3 -5 -3; blown -6 -5 8 -2; blue
-6 -8 4 -2; blue> -8 -6 1 0; blurred -14 -4 -3 14; blurry -10 -6 -5 7; board 5 -3 -1 -1; boat 0 -2 3 -9;
body 9 -16 -2 9; body> -8 -7 -4 8; boiled 9 -4 -2 -5; boiler 2 -1 0 0; bone 0 0 -7 0; bonjour 2 -2 0 0;
book 3 -1 -1 -1; boots 3 -3 -6 -4; bored 10 -5 -7 -5; boredom 1 0 -1 0; boring 3 -1 -1 -1; boss 6 -3 -2
-4; boss> 3 -3 1 -1; bot 4 -1 -2 0; both -1 2 -1 -6; bothered 8 -4 -7 -4; bottom -8 -4 -7 5; bought 3 -3
-2 -6; bowel -4 -3 -5 4; bowels 0 -4 -1 1; box 7 -6 0 -1; boxes 5 -2 -2 -1; boy 5 -5 -4 -4; boys 4 -1 0
-3; brain 3 0 -1 -2; bread 5 -1 -2 -2; break 6 -3 -1 -3; breakfast 3 -2 -4 -4; breakfast> 4 -3 -4 0;
breast -4 -6 -7 10; breastbone -9 -10 -9 10; breath -13 -5 -10 11; breath> -6 -3 -4 4; breathe -14 -12
-11 17; breathe> -7 -2 -4 7; breathing 10 -1 -5 -10; breathless -12 -4 -6 12; breathlessness -10 -6 -9
11; breathtaking 6 -5 -2 -8; bridge 5 -1 -4 -10; bridge> 6 -5 -2 -4; bro 3 -4 -4 -3; bro> 4 -5 -4 -4;
broke 4 -3 -4 -4; broken 10 -10 -11 -9; brother -4 -8 -7 5; brought 4 -3 -1 0; bruh 4 -5 -3 -3; bruise
-18 -14 20 -6; bruise> -5 -1 7 -2; bruised -12 -5 12 -7; brutal 1 -1 0 0; buckets -1 0 0 1; buckled -11
-1 12 0; buckles -10 -12 12 -8; buckling -12 -5 13 -2; bug 3 -2 -2 -1; bug> 1 0 -1 0; bum -11 9 -8 4;
burned 3 -3 -1 -3; burning -12 13 -5 -4; burst 7 0 -1 -7; bus -2 -5 5 -4; bus> 5 0 -4 -1; busy 4 -1 -1 0;
busy> 6 -1 -2 -2; but 0 2 -3 -1; but> 8 -5 -6 -9; butt 5 -2 -1 -1; buttock -7 -4 -12 7; buttocks -1 -6 0
6; button 11 -2 -3 -12; buzzing -17 9 -6 -5; by 2 -1 0 -1; cab 3 -7 -1 -6; cake -1 2 -2 -4; calf -10 0 9
-10; calf> 0 3 -1 -6; call 2 -3 -1 0; call> 3 -1 -2 -2; called 10 -5 -7 -1; calling -3 -2 -3 6; calls 7
-4 -2 -4; calm 3 -3 -1 -4; calmed 6 -3 -2 -3; calories 6 -5 -6 -5; calves 4 -3 -2 -2; calves> -3 4 -4 -5;
came -5 -1 -5 2; came> 9 -1 -6 -7; can -4 -4 -2 4; cancel 4 -4 -4 -4; cancel> 4 -1 -1 -3; cancelled 4 -2
-1 -1; candle 11 -10 -4 -5; candlelight 7 -2 0 -7; capitals 2 -1 0 -1; car 1 -7 2 -1; carpet -1 -2 -3 1;
carried 4 -2 3 0; carry -6 -11 10 -6; carrying 1 -1 3 0; cat 6 -3 -4 -4; cat> 3 -2 -2 -3; catch -1 -2 -3
3; cats 1 0 0 0; caught 0 -3 -5 1; cause -4 -3 -5 6; cba 4 -1 -2 -2; ceiling 4 -3 -2 -2; ceiling> 4 -4 -2
-3; certain 5 -5 1 -11; chair 3 -1 -4 -3; chance 5 -1 -2 -1; chance> 3 -2 -1 -1; change 4 -2 -2 -1;
changed 8 -2 -2 -4; chaos 1 0 -1 -1; chat 12 -1 -1 -11; checked -3 5 -5 -8; chest -18 -12 -6 22; chest>
-5 -4 -2 9; child 3 0 -6 -9; children 9 -8 -1 -1; chips 3 -1 0 -3; choir 4 0 -3 -3; church 2 0 -2 -1;
circles -9 3 6 -11; class 8 -1 -5 -1; class> 3 0 0 -2; clean 4 -3 0 -1; cleared 5 -2 -2 -5; client 1 0 0
-1; clients 7 -6 -1 0; climb -5 0 1 -1; climbing -5 -2 -4 7; clock 6 -1 -1 -5; closed 5 -1 -1 -3; club 0
-1 -1 2; cm 4 -3 0 -1; coach 5 -3 -1 -2; coach> 4 -1 -1 -1; cobra 9 -6 -3 -4; coffee 6 -5 -2 -4; coffee>
6 -2 -1 -2; coffees 4 -2 -1 -1; cold 5 -5 -3 1; cold> 1 -2 -2 0; colleague 2 -1 -2 0; come 3 -11 -2 7;
comes -9 -4 2 3; comfortable 3 -4 -3 -3; comfortable> 3 -4 -4 -3; coming -4 4 -1 1; commute 7 -4 -1 -3;
company 2 -1 0 -1; complained 6 -1 -3 -1; complete 5 -3 1 -5; complete> 1 3 -4 -5; completed 2 3 -3 -6;
completed> 7 -5 -4 -2; completely 6 -3 -3 -2; completely> 3 -2 -4 -2; concert 0 2 -3 -2; conference 4 -1
-1 -2; constant -9 9 -6 -5; constant> 10 -8 -4 -5; constantly -3 3 -2 -2; control -17 -7 -6 16; cooked 3
-1 0 -1; cooking 3 -3 -3 -3; cool 3 -3 -2 -3; cool> 3 -3 -2 -3; cork -1 0 3 -2; corner -1 -2 -2 3;
correction 5 -2 -1 -3; cottage 3 -3 0 -2; cotton 2 -2 -5 1; couch 8 -3 0 -7; cough 13 -8 -5 -4; cough> 4
-3 -1 0; could 0 -8 1 5; could> 7 0 -3 -5; count 8 -4 -1 -6; count> 12 -4 -1 -7; counting 9 -6 -3 -3;
couple -2 2 0 0; courbatures 4 -3 0 0; course 6 0 0 -6; cousin 3 0 0 -3; cousins 8 -8 -2 -7; covid 7 -3
-1 -5; cow -3 3 -1 -4; crack -16 -14 20 -4; cramp 6 -4 -8 -10; crashed 4 -6 3 -4; crawling -7 9 -3 -5;
crazy 3 -9 -2 -3; crazy> -4 -6 1 -3; cream 1 0 0 0; cricket -2 -2 2 0; cried 0 2 -6 -2; crossword 0 0 -2
-1; crushed 3 -2 -1 -1; crushing 3 -6 -7 2; cry 1 0 0 0; cup -3 -6 -2 5; cup> -1 -2 0 3; cuppa 6 -3 -2
-1; cups -5 6 -5 -4; current -9 5 -4 -4; curtain -1 -4 -4 8; curtains 2 0 -1 -1; cut 9 -9 -1 -1; cut> 2
-2 0 0; dad 12 -6 -4 -12; daily 2 0 0 -2; danced 3 -3 0 0; dancing 2 -2 0 0; dark -3 -1 -2 3; dark> 3 -3
0 -4; daughter -1 -6 -4 4; dawn 9 -8 -4 -4; day 1 -3 2 -7; day> 7 -1 -6 -14; days -3 0 -4 -1; days> 6 -2
-3 0; de 2 -1 -4 -5; dead -4 8 -12 -8; dead> 1 2 -3 -9; deadline 11 -2 -2 -7; deadlines 12 -10 0 -4; dear
6 -3 -7 0; dear> 7 -3 0 -6; deep 8 -3 0 -7; degrees -3 -1 4 -5; delayed 2 0 -1 0; dentist -2 -2 -3 0;
denver 4 -2 -2 -2; desk 5 -1 -1 -3; despite -4 4 -5 -1; details 1 0 0 -1; di 7 -5 -3 -2; diagnosed 9 -6
-6 -7; diagnosed> 5 -3 -3 -5; did 3 -3 -2 -1; did> 9 -3 -2 -4; died 5 -2 0 -2; diet 0 1 -5 -9; different
4 -1 0 -3; difficult 7 -1 -1 -4; difficult> 4 -2 -1 -2; digging 5 -1 -1 -3; dinner 3 -2 -3 0; dinner> 7
-4 -4 -2; discomfort -4 -8 -3 4; dizzy -28 26 -6 -7; dizzy> -7 5 -4 -4; do 1 -6 -4 -2; do> 4 -6 -1 -5;
doctor 6 -3 -6 -8; does -6 3 -3 -3; does> 2 -1 -10 -1; dog -2 -5 -5 4; dogs 2 -1 -1 0; doing -2 -3 -2 -2;
doing> 9 -9 -5 -12; doms 7 -5 -3 -3; doms> 7 -3 -2 -6; done 5 -2 -3 -2; done> 7 -3 -4 -7; door 6 -10 -5
-3; doorbell 11 -8 -3 -4; double -13 -9 1 11; down -4 3 -2 -4; down> 3 -8 1 -1; downs -5 6 -1 0; downward
0 0 -1 -1; drank 0 0 0 -2; dress 1 3 -1 -3; drill 2 -3 -1 2; drive 1 -1 -2 -8; driving -3 -1 5 -1;
drooped -8 -2 -3 6; drooping -16 -2 -4 8; drooping> -7 -3 -3 4; droopy -8 0 -1 10; drop -7 7 -2 -3;
dropped 1 -4 2 -2; dropping -4 5 -3 -6; drove 4 0 -2 -4; drum 3 -7 2 -6; drunk -1 -2 -1 3; dry -3 0 3 0;
duck 3 -3 -2 -3; due 7 -3 -1 -4; dug 5 -3 0 -4; dull 10 -6 -4 -1; dun 5 -4 -3 -3; during -10 6 -2 0;
dusted 3 -3 -2 -3; dusted> 3 -3 -3 -3; dying 2 -1 0 -1; e 9 -9 -7 -4; each 3 -1 -2 -2; earlier 1 1 -3 -2;
early 6 -3 -4 -2; early> 5 -2 -2 -2; ease -7 9 -3 -6; ease> -3 3 -2 -5; eases -2 4 -2 0; easier 6 -1 -5
-1; easter 10 2 -1 -3; easy 4 -1 -1 -2; easy> 3 -1 -1 -1; eating 10 -5 -5 -3; effort 4 -2 -1 -1; eggs 2 0
1 -1; eggs> 4 0 -1 -3; ego 4 -1 -1 -3; eight 0 -3 -6 2; either 9 -6 -3 -1; either> 6 -1 -1 -3; elastic 5
-4 0 -2; elbow -1 -1 0 -6; elbow> 3 -3 -3 -3; electric -15 9 -5 -8; electricity -7 5 -3 -4; elephant 0 0
-2 3; eleven 9 -5 -2 -4; else 3 2 -6 -4; else> 2 -1 -3 -3; elsewhere 7 -7 -1 0; elsewhere> 3 -2 -1 -2;
emails 5 -5 -1 -1; embarrassing -7 -2 -3 7; emergency 3 -3 -2 -1; empty 1 0 0 0; end -1 -5 -5 1; end> 1 1
-4 -7; ended 4 -2 0 -1; energy 9 -11 -7 -6; energy> 5 -1 -2 -2; english 8 -3 -7 0; enough 6 -4 -7 -7;
entirely 4 -3 0 0; erg 2 -1 0 -1; even -1 -8 -9 8; evening -2 -3 1 -1; evening> 7 -3 -5 -5; evenings 3 -3
-3 0; ever -10 5 8 -4; every -6 7 -4 -2; everybody -3 3 0 0; everyone 4 -1 -3 -2; everything -3 0 -4 0;
everything> 4 -11 1 -1; everywhere 3 -2 -1 -1; exactly 2 -2 0 0; exam 4 -3 -1 -5; exam> 2 0 -1 0; exams 7
-5 -4 -4; except 8 -5 -3 -5; excuse 4 -3 0 0; exercise 0 1 -1 -5; exercise> -3 0 -2 -6; exercises 5 -4 -3
-4; exercises> -3 3 -6 -3; extra 4 -3 -1 0; eye -9 -2 -1 13; eye> -1 -1 -2 3; eyes 4 -1 -2 -3; eyes> -4
-1 -2 4; ez 4 -3 -3 -4; face -2 -16 -5 9; faint -15 -8 -9 14; fainted -22 -8 -6 23; fainted> -7 -3 -6 8;
fair 4 -3 -3 -3; fait 6 -3 -1 -4; fall -1 -4 4 -9; falling -3 3 -3 -8; fam 7 -2 -7 -2; family 7 -5 -2 -2;
far 6 -5 -2 -2; farm 4 -5 -4 -9; fasting 2 0 -1 -1; fat -1 -4 11 -1; father -13 -9 -5 12; fave 5 -5 -5
-3; favourite 6 -4 -6 -4; fed 3 -3 -1 -4; feel -7 3 -3 -2; feeling -4 4 -7 -1; feeling> 6 -8 -3 -1; feels
-2 5 -8 -1; feet -7 8 -5 -7; feet> -5 5 -5 -2; fell -1 0 -4 1; felt -8 0 5 -1; felt> 7 -8 -9 1; fence 7
-2 -1 -4; fever -14 14 -3 -14; feverish -8 7 -3 -5; few -10 -3 -4 4; film 5 -3 -5 -5; final 5 -1 -2 -3;
finally 5 -4 0 -1; find 5 -1 -3 -1; fine 3 -3 -5 -4; fine> 2 -1 -5 -2; finger -1 9 -7 -10; fingers -9 12
-3 -10; fingers> 1 -1 -4 -5; fingertips 1 2 -1 -5; fini 6 -5 -3 -3; finish 6 -3 -3 -3; finish> 1 3 -9 -3;
finished 3 -1 -4 -2; finished> 4 -3 -3 -5; finishing 3 -3 -2 -3; finito 6 -4 -4 -4; fire 6 -4 -1 -3;
first 4 -3 2 -5; fish 2 -3 -6 2; fish> -10 -1 -1 10; five 6 -5 -3 -5; five> 6 -2 -2 -2; flat 9 -5 -1 -2;
flexible 4 -1 -1 -1; flexor 7 -6 -5 -6; flight -4 -1 1 0; flooded 7 -3 -1 -3; floor -1 0 -6 0; floor> -3
-2 -5 3; floors 2 -3 0 -1; flow 3 0 -2 -8; flu 9 -4 -3 -6; flu> 4 -3 -2 -1; flue 7 -8 -7 -7; fluttering
-9 -4 -4 7; fold -6 7 -3 0; fold> -1 -5 0 3; folds -9 2 9 -1; food 5 -1 0 -3; foot -15 11 4 -10; foot> 4
-3 -1 -6; football -1 -2 1 -1; football> 1 -3 4 -3; footy 5 -3 -1 -3; for -2 3 -6 1; force -8 -1 -11 6;
forearm 6 2 -1 -2; forearms 3 -1 -1 0; forget 2 -1 -1 -1; forget> 5 -2 -2 -1; forgot 11 -2 -2 -8; forgot>
7 -1 -1 -5; forgotten 4 -1 -1 -1; form 8 -3 -1 -7; forty 6 -1 -2 -5; forward -3 5 -2 1; found -3 -6 -8 4;
four 3 -4 -2 -3; four> 8 -2 -3 -3; fourth 5 -1 -5 -1; fr 6 -2 -1 -2; free 8 -5 0 -5; free> 6 -2 -2 -3;
freezing 2 0 -1 -1; friday -5 3 -2 -9; friday> 5 -2 -2 -5; fridge -3 3 -1 -1; friend 4 -1 -2 -1; friends
6 -4 -4 -2; frog 6 -8 0 -5; from 1 -1 -2 -1; from> 7 0 -5 -1; front 4 -5 -3 -2; frost 9 -1 -8 -3; froze 5
-5 -1 -2; full 0 -9 -1 1; full> 4 -2 -6 -2; fully 2 -6 -6 -1; fully> 0 -4 -4 1; fun 1 -2 1 -1; function 3
0 -2 -1; funeral 12 -3 -3 -11; funny -6 -2 -12 4; further 8 -6 -2 -4; game 4 -10 -1 -1; gaming 2 -1 0 0;
garage 7 -4 -1 -3; garden -1 -6 -3 3; gardening 3 -6 3 -6; gardening> 3 -2 -3 -1; gas 5 -1 0 -3; gasping
-7 -4 -4 6; gate 0 -3 0 -1; gave -5 -6 9 -9; get -2 7 -7 -4; get> 9 -8 -3 -7; getting -6 3 2 -4; girl 5 0
-3 -1; give 6 -3 -4 -3; gives -18 -7 13 -5; giving -6 -3 8 -2; glasses 3 1 -2 -5; glute -3 2 -2 -9;
glute> -3 5 -7 -1; glutes 10 -2 0 -9; go -8 4 3 1; go> 2 -1 -4 -3; god 3 -1 -1 -1; god> 6 -3 -1 -2; goes
-6 -2 3 2; goes> 1 -3 -4 -1; going -2 -3 -9 5; going> -3 4 -2 -3; gone -3 3 -6 -3; gone> 0 2 -5 -4; good
7 1 -5 -4; good> 8 -6 -1 -2; goodness 1 0 -1 0; gorgeous 7 -3 -3 -6; got -4 4 -2 -2; grandchildren 8 -4
-3 -2; granddaughter 0 4 -1 -3; grandkids 3 -2 0 -3; grandson 3 -5 -1 -6; grapefruit -3 0 3 0; great 8 -4
-8 -2; great> 9 -5 -3 -3; grey 0 -1 0 2; grip -13 11 -4 -8; grippe 11 -4 -2 -6; groin 0 -18 4 13; groin>
-5 -9 2 -1; ground 6 -2 -2 -4; guess 3 -3 -3 -3; guess> 6 -2 -3 -4; guests 8 -2 -1 -5; guests> 4 -1 -1
-2; guten 3 0 -1 -2; guy 4 -4 -6 -3; gym 9 -5 -5 -7; gymnast 4 0 -2 -2; ha 5 -2 -2 -2; had -1 -1 -7 4;
had> 6 -5 -6 -6; haha 4 -3 -3 -2; haha> 4 -2 -1 -1; hair 2 -1 0 -1; half -1 -3 -1 2; half> 4 -1 -3 -7;
halfway 1 -2 -1 -2; halfway> 3 -15 -1 -6; hallway -2 -1 4 -3; hamburg 5 -4 -3 -4; hamstring -5 -3 6 -6;
hamstring> -3 -1 3 -2; hamstrings 5 -2 -2 -1; hand -9 10 -4 -8; hand> -8 7 -4 -5; hands -10 9 -3 -8;
hanging -13 -1 -2 12; hanging> -5 0 -5 7; hangover 5 -1 -2 -2; hangs -5 0 5 3; happen 5 0 -1 -3; happened
-4 -2 -4 -1; happy 8 -5 0 -4; happy> 3 0 -1 -1; hard 7 -3 -7 0; hard> 5 0 -2 -2; hardly -7 -10 4 1; hart
2 -3 -3 -1; harvest 2 -1 -1 -1; has -5 -2 0 0; hate 4 -3 -1 -6; have -4 4 -1 -2; have> 8 -2 -5 -1; having
1 -2 -3 0; he 3 -3 -2 -2; head -9 10 -8 -6; head> -2 -2 -3 3; headache 5 -6 -6 -4; headed -10 8 -3 -4;
health 8 -2 -2 -4; hear -4 -3 5 -6; heard -7 -5 8 -5; heart -4 -11 -9 11; heartbeat -10 -8 -2 6; heat 4
-1 -2 -1; heating 10 -8 -4 -2; heavy -2 -7 -3 6; heavy> 2 -3 -3 2; hecho 2 -2 -1 0; heel -4 1 4 -5; heel>
-11 3 2 -3; held 8 -3 0 -7; hell 6 -5 0 0; hello 1 -2 -4 -1; hello> 4 -4 -3 -4; help 4 -4 -7 0; help> 1
-7 -7 0; helped 7 -3 -3 -3; helps -7 8 -2 0; helps> -3 3 0 0; hens 2 -1 0 0; her 8 -8 -4 -4; her> 12 -9
-5 -9; here 3 -4 -2 -3; here> 6 -11 -3 -4; hey 6 -2 -1 -4; hi 5 -2 -6 -2; hi> 6 -6 -1 -4; hike 4 -2 0 -2;
hike> 3 0 0 -2; hill 4 -4 -3 -1; him 7 -4 -2 -1; himself 2 0 0 -2; hinge 5 -11 -5 -1; hip -3 3 -1 -8;
hip> -3 0 -1 -6; hips 0 3 -2 -4; hips> 6 -2 -1 -4; his 2 -9 4 -11; hit 0 -5 -2 3; hiya 6 -3 -3 -3; hold
-5 -1 -3 3; holding 4 -5 -7 3; holds 2 -1 0 0; hole -2 -7 4 -2; holiday 7 -6 -1 -1; holidays 5 0 -1 -4;
home 3 -2 -4 -2; home> 6 -3 -3 -4; homework 7 -2 -2 -6; honest 7 0 -5 -2; honestly 4 -5 0 -4; hope 4 0 -2
-2; hopping -10 -7 7 -6; hospital -2 -10 -5 6; hot -3 -3 2 -11; hot> 0 -4 2 -3; hotel 9 -5 -4 -3; hotel>
2 0 -1 -1; hour 3 -3 0 -2; hour> -7 5 -2 2; hours 3 1 -1 -4; hours> 2 0 -2 -1; house 6 -4 -4 -4; house> 0
1 -3 -3; how 1 -2 -7 -1; however 3 3 -3 -4; hr 4 -1 -2 0; hrs 6 -6 -2 -2; huge 4 -3 -1 -1; hundred 6 -5
-4 -10; hungry 2 -1 0 -1; hurt 6 -5 -2 -2; hurt> 0 -14 3 -5; hurting 4 0 -5 -6; hurting> 2 -1 -3 -4;
hurts 0 2 -2 -3; hurts> 1 -1 -9 1; husband 0 -10 -6 7; i 1 -3 -2 0; i> 6 -7 -8 -8; ice -3 0 4 0; ich 4 -1
-1 -1; id 3 -2 0 -1; idea -7 6 2 0; idk 1 -1 -6 -6; if -7 -3 5 -5; ill 8 -2 -3 -3; ill> 6 -4 -4 -1;
impossible 6 -4 -2 -1; in -1 0 -1 0; in> 4 -3 -1 -2; inbox 3 -3 -2 -2; indoors 4 -3 -2 -5; infection 11
-6 -1 -10; inner -2 -5 -2 4; inshallah 4 -1 -2 -1; inshallah> 4 -1 -2 -1; inside 2 -7 -1 -1; instead 7 -6
-2 -3; instead> 3 -2 -2 -1; internet 9 -6 -2 -5; into -3 1 -9 2; irregular -11 -6 -5 12; irregularly -8
-2 -1 7; is -2 -1 2 1; is> 3 0 -10 -6; it 1 -1 0 -4; it> -1 -3 4 -1; itself 0 0 -4 1; itself> -10 6 -8 3;
ja 4 -3 -1 -1; jab 4 0 0 -4; jar -3 3 -2 -4; jaw -8 -7 -4 6; jaw> -2 -2 -2 6; jelly 6 -6 2 -7; jk 5 -2 -2
-1; job 7 -5 0 -1; joined 5 -3 -1 -2; joint -13 7 6 -6; jumbled -2 0 0 3; jump 7 -6 -1 -6; jumped 8 -4 -1
-7; jumper 6 -5 -2 0; jumping -9 0 0 10; june 7 -7 -2 -3; just 1 -5 -4 -1; k 5 -1 -3 -7; k> 3 -3 -3 -3;
keep -5 3 -2 0; keeps -11 4 4 -1; kept 1 1 -7 -7; kettle 11 -5 -3 -6; keys 0 3 0 -3; kg 7 -1 -10 -3; kick
3 -2 -1 -1; kicked 2 -8 1 -5; kid 14 -13 -4 -6; kids 6 -3 -4 -5; kids> 8 -5 -3 -3; kill 6 -4 -3 0; killer
3 -1 0 -1; killing 9 -5 -10 -11; kilometres 5 -1 -2 -3; kilos -4 5 -2 -4; kind 3 -4 -2 -3; kinda 0 -3 -4
1; kindly 6 -2 -2 -2; kitchen -9 -2 -2 6; kitchen> 4 -2 2 -3; km 10 -6 -2 -4; knackered 10 -1 -4 -9; knee
-1 -6 7 -8; knee> 1 1 -4 -5; kneeling 0 -6 2 -2; knees 4 -11 1 -4; knees> 6 -3 -4 -4; knitting 1 0 0 0;
know -2 -2 0 -3; know> -3 -1 -1 3; knows 1 0 0 0; knows> 1 0 0 0; krakow 2 0 -1 -1; l 4 -2 -2 -1; ladder
-3 -1 2 -4; ladies 5 -4 -1 -1; lads 3 -3 -3 -4; lake 2 1 -2 -2; landing 1 -2 3 -2; laptop 6 -4 -4 -2;
lasagne 1 -1 0 0; last 1 -5 0 -2; last> 6 0 -3 -4; lasted -3 1 0 3; late 6 -4 1 -7; late> 4 -3 -1 0;
later 6 -3 -2 -4; later> 5 -1 -3 -1; latter 2 0 -1 -1; laugh 7 -3 -2 -4; laughed 5 -6 -1 -4; laughing 4
-1 -1 -3; laughing> 2 -3 -4 -1; law 9 0 -1 -9; lawn 1 -2 -2 2; laws 3 -1 0 -2; lay 0 3 -4 -3; lazy 8 -3
-3 -2; least -2 -1 -3 0; leave 4 2 -3 -3; leeds 8 -6 -1 -2; left 0 -1 0 -2; left> 3 -1 -4 -2; leg -11 7 3
-7; leg> -11 1 0 -4; legs -4 -1 -6 1; legs> -8 0 -4 3; lengths 3 -2 -1 -4; less 4 2 -4 -10; less> 2 -1 0
0; let 5 0 -2 -3; level 9 -3 -4 -5; licking -4 -1 0 4; lie -2 4 -3 -4; lie> 3 -2 -4 -1; life 2 -1 -4 1;
lift 1 1 -6 0; lifting 8 -5 -4 -7; light -8 6 -3 -3; light> 5 -3 -3 -6; lighter 10 -3 -8 -3; lighter> 8
-1 -3 -5; lightheaded -14 14 -5 -6; lightning -12 10 -4 -7; lights -8 -6 4 6; like -2 1 -1 -2; like> 3 -3
1 -1; liked 1 0 -1 0; lil 0 4 -6 -9; line 4 -3 -1 -3; lisbon 2 -1 -1 -1; list 1 -4 -1 -4; list> 6 -4 -7
-3; listen 1 0 0 -1; listening 3 -1 -1 -1; literally -6 0 1 5; little 7 1 -6 -5; little> 8 -5 -4 -1; live
-1 3 -3 -3; living 4 -3 -3 0; load 1 -11 8 -11; loads -7 8 -1 -1; lol 1 -2 -3 -2; lol> 6 1 -2 -11; long 2
1 -4 -5; longer 9 -2 -3 -7; loo -1 -4 4 2; look -3 -2 -3 2; looked 9 0 -3 -7; looking 9 -6 -1 -1; looks 0
-5 4 -7; loose 8 -5 -3 -13; lose 2 0 -3 -4; loser 3 -2 -2 -2; losing -9 3 -4 2; loss -6 12 -12 -9; lost
-11 2 -5 8; lost> 9 -7 -6 -8; lot 1 -1 -3 -6; lot> 4 1 -9 -4; lots 3 0 -3 -1; loud -6 -4 6 -5; love 6 -2
-8 -5; loved 4 1 -1 -2; lovely 5 -6 0 -10; lovely> 3 -1 -2 -2; low -2 -2 -1 2; lower 3 -3 0 -6; lowkey 2
-1 0 -1; lunch 3 -2 -5 -1; lunch> 2 -3 1 -3; lunge 2 -5 1 -6; lunge> -3 -2 4 -3; lunges 3 -5 -1 -1;
lunges> 5 -4 -2 -4; lvl 6 -6 -1 -4; lying -5 0 -5 4; lyon 1 -1 0 0; m 2 -1 0 0; ma 2 -6 1 -6; machine 5 0
-5 0; mad -7 -2 0 1; mad> -1 3 -4 -3; madam 5 -4 -6 -3; made 1 -7 3 -2; make 1 -2 -3 -3; makes -3 -3 -9
1; making -3 -2 0 3; man 10 -8 -3 -4; man> 2 -2 0 0; manage 10 -5 -7 -3; managed 6 -5 0 -3; many 6 -3 0
-3; margaret 8 -9 -3 -1; mark 3 -4 0 -3; market 5 -2 -2 -1; marking -2 2 0 0; mat 4 -6 -4 -1; mat> 5 -7
-7 -1; match 1 -3 2 -2; mate 7 -1 -3 -2; mate> 8 -4 -3 -3; mates 4 -3 -1 -4; maths 6 -5 -4 -3; matter 4
-4 -4 0; max 5 -4 -5 -5; may 6 -11 0 -1; maybe -6 0 -5 5; maybe> 8 -5 -5 -11; me -3 1 -1 -5; me> 0 -3 -2
-2; mean 4 -3 -4 0; mean> 3 -3 -2 -3; meant 6 -6 -4 -2; medicine 3 -2 -1 -2; meeting 6 -4 -1 -5; meeting>
4 -1 -2 -2; meetings 8 -4 -1 -2; meetings> 5 0 -1 -3; melon -4 -1 7 -4; memory 5 -5 -2 -8; men 1 0 -1 0;
mention -2 4 -7 -4; mess 4 0 0 -3; message 5 -1 -1 -3; messages 3 -2 -2 -2; messages> 4 -2 -1 -1; mid 4
-4 -3 -2; middle -2 2 -6 -1; midnight 6 -4 -1 -3; might 1 -3 1 -3; migraine 12 -6 -3 -5; migraine> 2 0 -1
0; miles 1 0 -3 -4; milk 6 -5 -1 -7; min 1 -6 -1 -1; min> -4 0 -3 1; mind 0 -3 -2 -2; mine 0 -9 -6 5;
mins 3 -5 -1 1; minus 3 -3 -2 -3; minute -1 -7 -4 4; minute> -1 -6 -7 5; minutes 1 -1 -2 2; minutes> -1
-5 -3 2; miss 6 -1 -6 -2; miss> 7 -1 -6 -3; missed 7 -2 -2 -4; missing -7 -4 0 7; mom 3 0 -1 -1; moment
-5 4 -5 4; monday 4 -4 -3 -2; monday> 3 -4 -3 0; month -5 6 -1 -4; months -4 4 0 -5; mood 6 -3 -2 -2;
mood> 4 -3 -4 -4; more -2 1 -3 0; more> -4 3 -5 3; morgen 2 0 -1 0; mornign 6 -2 -2 -3; mornign> 8 -4 -3
-4; morning 1 -3 -1 -1; morning> 0 -1 -2 -1; mornings 1 0 0 0; most 7 -1 -3 -2; mostly 6 0 -1 -4; mother
-3 -14 -10 8; motivation 8 -3 -4 -5; motivation> 4 -3 -5 -2; mountain 5 -5 0 -4; mouth -7 -10 -4 12; move
4 7 -10 -7; moved -3 3 -1 -3; moves 8 -4 -3 -4; moving 4 -1 -1 -2; mowed 0 -2 -3 2; msg -3 -4 -2 4; much
0 -5 2 -5; much> 3 -3 0 -3; mum 2 -4 -3 -1; murder 4 0 -3 0; murdered 5 -2 -3 0; muscle 3 -8 2 -7;
muscles 6 -4 -2 -2; music 0 3 -1 -3; must -9 -4 -5 9; my -4 0 2 1; myself -9 -12 -6 12; myself> -7 -1 -2
8; na 2 -1 0 0; nah 4 -4 -3 -3; nah> 4 -4 -4 -3; name 5 -6 -4 2; names 9 -7 -3 -6; nan 2 -1 0 0; nap 5 -2
-1 -5; nasty 2 -1 -1 -1; near 6 -2 -3 -1; nearly -2 -7 -2 1; neck 5 1 -4 -4; neck> -4 -1 1 -1; need -4 -6
-3 5; needed 8 -5 -1 -7; needle 3 -1 -2 -1; needles -9 10 -4 -4; needs 3 -4 -3 -3; neighbour -9 -7 -3 9;
neighbours 4 -4 0 -4; nephew 3 -1 -2 0; netflix 3 -1 -1 -1; never 5 -4 -3 -6; new 1 -7 -4 3; new> -3 -3
-2 3; news 5 -3 -4 -5; next 0 -8 -8 5; ngl 3 -2 -2 1; ngl> 6 -3 -2 -3; nice 4 -2 -3 -9; nice> 3 -3 -3 -2;
nicely 3 -3 -2 0; niggle 7 -3 -4 -1; night -11 10 -7 -1; night> 5 -6 1 -4; nights -7 9 -7 -9; nine 3 -2 0
-1; nite 1 -1 1 -1; no -2 0 3 -4; no> 11 -3 -6 -3; nobody -4 -7 5 -3; noise -3 0 3 -1; none 7 -2 -4 -1;
none> 7 -1 0 -5; noon 4 -5 -1 2; noon> 10 -10 -1 -6; nope 6 -4 -2 -5; nope> 4 -1 -2 -1; normal 6 1 -10
-7; nose 9 -3 -3 -5; not -5 -1 2 2; note 4 -2 -1 -1; nothing 0 -4 -6 2; nothing> 2 -9 -6 2; notice -7 -1
-4 2; noticed -2 0 1 -1; noticing -4 -4 -3 4; now -3 -2 2 1; now> 2 -1 -3 -7; nowhere -10 -4 -5 12; numb
-22 14 -9 4; numb> -9 4 -5 2; number 4 -2 -3 -1; numbness -17 12 -10 -2; nursery 3 -1 -2 -1; o 3 -2 -1 0;
obviously 5 -5 -4 -2; oclock 4 -6 -5 1; oclock> 3 0 0 -2; odd 6 -8 -8 6; of 0 0 -2 -1; of> 4 -4 -6 -3;
off 2 -8 0 -4; off> 5 -2 -4 -4; office 3 -1 -4 -5; office> 5 -2 -3 -5; oh 5 0 -1 -4; ok 0 -2 -8 -4; ok> 1
-1 -3 -4; okay 3 1 -3 -7; old 8 2 -2 -5; omg 6 -5 3 -1; omg> 2 -1 -1 -1; on -3 -4 3 -2; on> -1 1 -3 -6;
once -2 -5 -2 6; once> 7 -1 -1 -6; one -3 -4 -2 2; one> 7 1 -6 -11; ones 4 -5 -3 -7; ones> 3 -3 -3 -5;
only 2 -1 -1 -3; only> 3 -2 -1 -4; oops 2 -2 -1 0; open 5 0 -2 -7; opened 11 -8 -6 -11; opener 8 -3 -1
-8; operation 2 -8 2 -6; or 11 -3 -2 -14; or> 3 -2 -2 -2; osteoporosis 5 -4 -1 -2; other -4 -10 8 -7;
other> -3 -3 3 -1; others 4 -1 -2 -1; others> 3 -3 -3 -3; otherwise 5 -2 -1 -5; ouch 5 -3 -2 -3; ouch> 6
-4 -4 -4; oui 3 -3 -3 -2; our 6 -6 -1 -1; out -2 -7 0 4; out> 2 -7 -7 0; outer -1 9 -3 -8; outside 4 -1
-5 -4; oven 3 -1 0 -1; over -6 0 -4 4; over> -5 9 -14 -15; overnight -10 -6 10 -7; overslept 6 -4 -2 -3;
overslept> 5 -5 -2 -3; overtime 7 -5 -1 -1; own 5 -2 -2 -1; packed 3 0 -2 -5; pain -1 2 -3 0; pain> -3 -3
1 -1; painful 3 -6 -1 -6; painful> 4 -3 -4 -4; paining 2 -3 -8 -2; paining> -5 5 -8 -13; pains -11 3 -12
4; painted 2 -2 -2 -2; palpitations -16 -13 -7 18; palpitations> -8 -6 -3 9; pancakes 6 -1 0 -4; paper
-13 -9 -10 13; papers 0 -1 -1 1; parcel 7 -6 -1 -1; parents 3 -3 3 -5; park 4 -2 -3 -7; parked -9 -3 -5
7; part 5 0 -3 -2; part> 3 -1 -1 -1; partly 7 -3 -3 -3; party 7 -4 0 -3; pass -4 -12 -7 10; passed -15 -5
-6 14; past 3 -2 0 -1; pasta 3 -2 -1 -1; patch -3 -2 2 -6; patients 6 -3 -6 -5; pause 5 -2 -1 -3; pause>
8 -2 -2 -4; peace 6 -4 -5 -6; pee -12 -14 -7 19; pee> -5 -4 -5 7; people -1 1 -1 -2; percent 5 -5 -1 -2;
percent> 6 -1 -1 -4; perhaps 6 -2 -4 -3; period 5 -5 -2 -2; period> 4 -3 -2 -2; phone 6 0 -10 -3; physio
3 -3 -2 -4; piano 11 -6 -2 -6; pick 9 0 -1 -8; picked -1 0 2 0; picture 4 -6 -3 -2; pictures 3 -2 0 -1;
pigeon 8 -2 -2 -5; pillow -1 4 -2 -4; pinky -4 7 -3 -11; pins -8 9 -4 -4; pit -8 0 8 0; pitch -1 2 0 -2;
pizza 4 -3 -3 -4; place -7 -5 -6 10; plan 7 -6 -2 -4; plan> 1 0 0 -1; plane 5 -1 -3 -1; plank 5 -4 -2 -3;
plank> 3 -2 -5 -3; planks 5 -5 2 -4; planks> 3 -6 4 -7; planned 9 -7 -5 -1; planted 4 -4 -2 -3; plants 3
-6 -3 -2; plate 0 -2 0 0; platform 2 0 -1 -1; play 4 -3 -2 -3; played 0 -6 0 -4; playlist 2 0 0 -2;
pleasant 3 -2 -1 -1; please 5 -2 -2 -2; please> 5 -2 -3 -2; pleased 3 -3 -2 -7; plumber 6 -4 0 -2; plus
-10 10 -2 -2; pm 4 -2 -2 -2; pm> 5 -3 -4 -4; point 9 -5 -5 -2; poisoning 5 -2 0 -4; pool 5 -4 -1 -6; poor
5 -4 -6 0; poorly 9 -6 -4 -2; pop -20 -13 21 -3; pop> -3 -1 3 -4; popped -21 -11 23 -6; popped> -4 -1 6
-1; porch 6 -4 -7 -5; porridge 8 -4 -2 -3; porridge> 6 0 -2 -4; pose 3 0 -4 -5; pose> 7 -6 -2 -2;
position -3 5 -1 -9; possible 0 -6 3 -3; postman 4 -2 -2 -4; potatoes 8 -2 -1 -5; pounds 2 0 0 -3; power
-3 10 -13 -11; practice 5 -8 7 -5; prefer 3 -2 0 -1; pregnant 7 -2 -3 -3; pregnant> 8 -4 -5 -5; press 4
-1 -1 -3; pressed -3 -3 -4 5; pressing -2 -10 -9 12; pressure -12 -4 -4 11; pressure> -3 -2 1 3; pretty 4
-1 -2 -1; prickling -12 12 -9 -5; prob 3 -10 -7 1; probably 3 -3 -3 -2; problem 2 -6 -6 -1; problem> 5
-10 -8 -2; problems 5 -3 -6 -5; program 9 -2 -4 -6; programme 6 -2 -1 -4; programme> 4 -2 -2 -3; promise
9 -7 -4 -5; promise> 2 0 -1 -1; proper -10 5 0 -3; properly -7 2 -6 2; properly> -6 3 -7 -1; proud 4 0 -2
-2; pub 2 -1 0 -1; puffed -5 -4 6 -2; puffy -7 -6 6 -4; pull 14 -9 -5 -9; pulled 1 -10 -1 -5; puppy 5 -6
0 -1; purple -8 -10 10 -5; push -7 3 -3 3; put 1 -13 6 -9; quads 6 -3 -3 -1; quarter 5 -1 -2 -3; quarters
1 0 -1 0; question 7 -8 -6 -6; quick 3 -1 -2 -1; quiet 3 -2 -1 0; quit 5 -9 -6 -2; quit> -4 -2 -4 5;
quite 1 2 -5 2; quiz 2 -1 0 -1; qx 1 -1 -2 -4; qx> -4 1 -2 -2; r 3 -3 -2 -1; race 5 -9 -5 -1; racing -10
-5 -2 11; radiates -9 11 -9 -1; radio 9 -6 -8 -4; rain 12 -12 -5 -8; rained 7 -1 -4 -2; raining 9 -11 -1
-2; rainy 0 2 0 -1; ramadan 4 -2 -1 -1; ran 3 -1 -1 -2; rang 7 -1 -1 -5; rang> 2 -1 -1 -1; rate 0 0 -3
-2; rd 2 -5 0 -1; reach 2 0 -1 0; reached 1 -3 3 -2; read 5 -2 0 -4; reading 4 -3 -4 -7; ready 3 -2 -3
-3; real 6 -1 -2 -3; really -2 0 -1 -2; receive 1 0 -1 -1; reckon 2 -1 0 -1; red -2 -3 3 -1; regatta 0 -2
0 2; rehearsal 3 -1 -1 -5; remember 8 -9 -5 -9; remember> 3 -2 -3 -5; reminder 3 -2 -1 -1; rep 0 -4 3 -2;
report 11 -6 -8 -7; report> 9 -1 -10 -5; reports 1 0 0 0; reps 5 -5 -3 -3; rest 8 -12 -2 -3; rest> 3 -2
-2 -1; results 3 -3 -4 -3; reunion 5 -2 -1 -3; ribs -5 -5 5 -1; rice 4 -4 -3 -3; ride 2 -1 -1 -4; right 1
1 -1 -4; right> 4 -3 -3 -7; ring -7 3 4 -7; ringing -1 0 1 0; river 3 -3 -3 -6; road 7 -4 -1 -5; roll -4
6 -7 -11; rolled 0 0 1 -2; rolls 8 -8 -6 0; roof 2 0 -4 -5; room 0 2 -2 -5; room> -2 -1 4 -1; roommate 6
-3 -2 -3; roses 2 0 3 -7; rough 8 -7 0 -1; roughly 6 -1 -4 -1; round -1 -3 -2 0; round> 0 -9 -1 -1;
rounds 3 -5 1 0; rounds> 5 -5 -5 -5; routine 9 -7 -1 -3; row -1 -2 -2 -2; rowing 9 -8 -6 -3; rubber -5 -3
7 0; rug 6 -4 -3 0; rugby 9 -8 -1 -1; run 4 -1 -3 -2; run> 7 -2 -2 -4; running -3 4 -8 -6; runs -11 13 -7
-6; s 3 -3 1 -1; sad 5 -10 -2 -3; saddle -5 -7 -3 7; said 4 -2 -1 -2; salon 6 -5 -2 0; same 5 -3 -4 -6;
same> 4 -4 -6 -3; sang 1 -1 -6 -4; sat -6 0 -4 5; saturday 6 -5 0 0; saw 0 -5 -10 2; say -1 0 -2 1; say>
3 -1 -1 -2; says 1 -3 -3 1; scale 11 -4 -5 -2; scale> 8 -2 -7 -1; scared 6 -4 0 1; school -1 4 1 -2;
school> 9 -7 -5 -8; scones -4 -1 4 -4; scratch 6 -4 -1 0; screaming 5 -4 -3 0; screen -5 -6 -9 5; sea -1
-2 6 -3; seat -1 6 -7 -1; seated -5 2 2 -5; sec -5 5 -5 -3; second 1 -3 -9 3; second> 3 -4 -4 1; seconds
-6 -4 -1 7; seconds> 1 -2 -1 0; secs -6 -3 -2 6; see -5 -6 -7 9; seeing -9 -9 -5 9; send 5 -1 -1 -2;
sending 4 -2 -1 -1; sent 2 -2 0 0; sentence -6 -2 -3 7; session 2 -2 -2 -1; session> 5 -3 -7 -3; sessions
3 -2 -1 -1; set 1 1 -6 -7; set> -3 3 -6 -3; sets 7 -3 -2 -2; sets> 3 1 -2 -1; settle -6 5 -4 -2; settled
5 -5 -6 -4; seven 5 -2 -1 -3; seven> 6 -2 -3 -3; severe -22 -7 18 5; sewing 3 -14 -3 -2; shake 9 -6 -4 0;
shame -1 -1 2 -1; sharp 6 -8 8 -2; sharp> 5 -1 -3 -1; she 7 -2 -3 -3; shedding 5 0 -3 -1; shift 8 -4 -3
-7; shift> 2 -5 -7 0; shin -8 -1 7 -9; shin> -3 -1 5 0; shins 8 0 -5 -2; shivering -12 12 -7 -10; shock
-6 -1 2 -6; shoe 0 -3 4 -2; shooting -18 10 0 -3; shoots -7 7 -8 -6; shop 10 -3 -2 -6; shopping -2 0 5 0;
shops 5 -3 -4 -8; short -5 -4 -4 6; short> 7 -3 -3 -10; shorter 5 -2 -2 -2; shorter> 6 -3 -3 -4;
shortness -8 -3 -3 4; shot 1 0 -2 -2; should -7 -2 6 -4; shoulder -1 -3 4 -6; shoulder> 4 -5 -2 -3;
shoulders 7 -5 -1 -2; show 5 -5 -3 -4; showed 5 -5 -2 -2; shower -3 -2 -3 4; shut 8 -2 -3 -4; si 6 -5 -3
-2; sick 14 -2 -3 -10; sick> 4 -1 -2 0; side -3 -8 -4 4; side> -3 1 -3 -9; sides 6 -6 -2 -1; sides> 3 -3
-2 0; sight -10 -7 -4 8; signed 7 -3 -3 -7; simply 1 0 -1 0; since -9 -2 -5 4; since> 1 -5 -6 1; singing
4 0 -2 -2; single 4 -1 -2 -1; sink -7 -2 -1 7; sir 6 -6 2 -1; sir> 6 -4 -3 -6; sister 3 -5 0 -5; sit -4
-3 -3 6; sit> -1 4 -2 -8; sits 5 -6 -2 0; sitting -6 -10 -4 8; six 5 -7 -6 -4; size -3 -6 6 -5; skip 8 -5
-6 -4; skipped 7 -5 -3 -3; skipped> 9 -3 -5 -9; skipping -2 -9 -3 5; skipping> 8 -8 -10 -7; skips -8 -5
-3 5; slammed -3 -1 3 -1; slay 6 -5 -3 -5; sleep -7 10 -10 -9; sleeping 2 -1 -4 -4; sleeps -12 12 -9 -9;
slept 5 0 -1 -6; slight 4 -2 -5 -5; slip 8 -4 -4 -10; slipped 1 -8 5 -8; slot 9 -8 -8 -7; slow 4 -4 -3
-1; slowly 4 -6 -4 -4; slurred -16 -4 -6 15; slurred> -7 -4 -3 11; small 5 -4 -5 -6; smth -4 -1 4 -1;
smug 7 -4 0 -6; snap -13 -9 15 -4; snapped -10 -8 12 -5; snow 5 -3 -2 0; snowed 2 -1 -1 -1; so 1 -2 -2
-4; so> 2 3 -8 -8; sock 0 2 -5 -16; sofa 3 -3 0 1; sole -4 9 -1 -11; sole> -1 7 -1 -6; solid 6 -4 0 -1;
some 2 -1 -5 -4; somebody -6 -6 -4 7; someone -9 1 5 0; something -3 -11 6 -2; somewhere 5 -1 0 -4; son 7
-4 -5 -5; sore 6 1 -6 -4; sore> 7 -6 -3 -3; soreness 6 -6 -4 -3; sorry 5 -4 -1 -1; sorry> 3 -1 -1 -1;
sorted 4 -3 -3 -3; sound -11 -10 12 -2; soup -5 5 -1 0; space 6 -2 -4 0; spare 4 -3 -1 0; speak -10 -7 -3
10; speech -9 -7 -6 10; speech> -6 -1 -1 6; spent 2 0 -1 -1; spinning -12 9 0 -4; split 3 -1 -2 -1;
splits 4 -3 -3 -2; spot 3 -1 -1 -1; spreadsheets 8 -5 -7 -8; squat 0 1 -4 -3; squats -1 2 -3 -2; squats>
-1 2 -2 0; squeezed 7 -2 0 -7; squeezing -4 -3 -5 6; stabbing 4 -15 7 2; staff 5 -1 -1 -3; stage 3 -1 -1
-3; stairs -11 -2 3 1; stairs> -1 -3 -1 -11; stand -5 -8 9 -5; standing -9 10 -5 -1; stared 2 -2 0 0;
staring 3 -2 -1 -1; start 5 -3 0 -1; started 1 -7 -2 3; started> 11 -3 -5 -8; starting 4 -2 -1 -2; static
-6 7 -8 -3; station 7 -1 -3 -4; stay -4 6 -3 -7; stayed 3 -1 0 -1; staying 9 -9 -2 -1; stays -7 4 -5 3;
step -12 -10 11 3; steps 2 -3 -7 2; stif 7 -2 -3 -4; stiff 10 -7 -1 -2; stiff> 3 -1 -1 -2; stiffness 7 -6
-1 0; still -7 6 -5 1; still> 4 -8 -4 5; stinking 10 -2 -5 -5; stomach 10 -4 -3 -12; stone -4 2 -4 -2;
stood -5 3 0 -2; stop -2 1 -3 -6; stop> -1 4 1 -3; stopped -3 0 -1 -3; stopped> 0 1 -1 -5; stopping 1 5
-6 -3; stops -1 -5 -10 4; storm 6 -6 -1 0; story 4 -1 0 -3; straight 5 -2 -4 -7; strap 4 -1 -1 -1; strap>
6 -3 -1 -3; streak 3 -1 -2 -1; streaming 4 -13 -3 -3; street 4 -3 0 -1; strength -13 11 -7 -8; stress 7
-2 -3 -7; stretch 1 1 -4 -3; stretch> 0 2 -5 -4; stretched 7 -8 -3 -2; stretches -1 -3 0 -1; stretches> 6
-2 -4 -3; stretching 3 -5 0 -1; stretching> 3 -1 -4 -1; strong 5 -17 7 -2; stuck 8 -3 0 -4; stuff 5 -4 -1
-3; such -7 -3 2 3; sudden -10 -18 -4 19; sudden> -2 -3 0 4; suddenly -3 -22 -8 14; suddenly> 2 -6 -4 2;
sugar -2 0 0 2; sun 5 -3 -1 -4; sunday -3 3 -3 -2; sunday> 3 0 -3 -3; sunny 0 1 -1 0; sunrise 4 -3 -2 -3;
sunset 2 1 -3 -3; super 0 2 -1 -4; sure 4 -3 -3 -5; sure> 11 -3 -6 -8; surgery 7 -5 -5 -7; swamped 8 -7
-2 -8; swear 8 -5 -10 -10; sweat -1 -5 -3 3; sweat> -2 -3 -2 2; sweating -10 -5 -2 7; sweating> -4 -5 -2
5; sweaty 3 -2 -2 -2; swell -4 -11 5 -7; swelled -15 -9 16 -5; swelling -18 -8 18 -8; swimming -4 -1 5
-1; swole -10 -8 10 -2; swollen -20 -6 22 -4; swollen> -7 -2 7 -1; table 4 -7 -7 3; tablets 3 -3 -11 -6;
take 2 -7 4 -7; taking 0 -4 4 -9; talk -2 -3 -3 2; talked 2 0 -1 0; tapped 4 0 -3 -7; target 2 -2 0 0;
tax 5 -2 -4 0; tbh 6 -2 -1 -2; tbh> 5 -4 -1 -2; tea -3 2 -3 0; tea> 6 -4 -4 2; teacher 8 -4 -3 -2;
teacher> 2 0 -1 -1; team 10 -2 0 -7; teething 9 -8 -2 0; telephone 6 -6 -3 -8; tell -4 4 -2 3; telly -2 5
-7 -2; temp -10 9 -4 -3; temperature -3 5 -3 -3; ten 0 0 -5 -4; ten> 0 2 -3 -6; tender 8 -5 -5 -3;
tender> 3 -1 -2 -2; tennis 2 0 -1 -1; tent 9 -5 -3 -1; terrace 8 -5 -9 -5; terrible 0 -1 -3 1; test 5 -1
-2 -3; texting 3 -3 -2 -2; th 5 -3 -2 -1; th> 2 -1 -1 0; than -1 0 4 -2; thank 9 -13 -1 -5; thanks 6 -2
-2 -2; thanks> 6 -2 -3 -2; that -3 -3 -2 1; that> 3 -7 1 1; the -2 0 -1 1; the> 6 -5 -6 -3; theatre 1 1
-1 -2; them 6 -1 1 -6; them> 5 -2 1 -2; then -1 -5 1 0; then> 3 -7 -1 -13; there -2 -1 -1 1; there> -3 4
-3 4; these 3 2 -3 -7; these> 4 -4 -1 -2; they 0 1 -3 -2; thick -8 -4 8 -4; thigh -8 -5 3 -6; thigh> -2 5
1 -13; thighs 1 -3 -5 3; thing -1 3 -6 -3; thing> 9 -5 -1 -7; things -2 3 -2 0; think -6 -7 4 3; think> 3
-5 0 -8; thinking 1 0 0 0; third 2 -5 -5 1; thirds 7 -3 -2 -2; thirty 3 -2 -2 -4; this -3 -2 0 1; this> 3
0 -2 -3; those 4 -3 -4 -3; those> 5 -1 0 -4; though -2 -4 5 -3; though> 3 -2 -1 -2; thought -2 -4 -2 3;
thread 0 -1 3 -1; three 5 2 -2 -6; three> 8 -6 -4 0; threw 9 -6 -4 -3; throat 1 -1 0 0; throbbing -16 -5
17 -8; throbbing> -6 -3 6 0; throbs -11 -8 11 -7; through 3 -4 -2 -4; throwing 6 -6 -7 -8; thumb -6 8 -3
-11; thursday 4 0 -2 -3; thursday> 5 0 -4 -4; ti 4 -2 -1 -1; tight 4 -7 -2 2; tight> 5 -2 -3 -3;
tightness 4 -2 -1 -1; tiles -2 -10 -6 9; till 0 2 -1 -4; time 6 0 -4 -6; time> 2 2 -7 -4; times -5 3 1
-2; times> -1 3 -4 -2; timing 2 -1 0 0; tingle -12 12 -5 -7; tingled -9 10 -7 -5; tingles -15 12 -8 -6;
tingles> -8 6 -5 -4; tingling -22 21 -8 -3; tingling> -7 7 -2 -5; tingly -12 13 -6 -7; tiny -7 -4 1 -4;
tired -2 -4 -5 4; tired> 2 1 -4 -10; to 2 -2 -2 -2; toast 2 0 -6 -6; today 4 -5 0 -2; today> 6 -3 -3 -6;
todays 0 -4 -2 0; toddler 2 -1 -6 -6; toe 3 3 -6 -8; toe> -7 7 -3 -5; toes -12 16 -6 -11; toes> -3 3 -3
-7; together -6 7 -1 -3; toilet -4 -11 -6 4; told 10 -8 -1 -1; tomatoes 10 3 -3 -3; tomorrow 5 -3 -2 -1;
tomorrow> 3 -2 -2 1; tongue -1 -16 -7 6; tonight 1 -5 0 -4; tonight> 6 -1 -3 -2; tonite 7 -3 -3 -2;
tonite> 3 -1 -1 -1; too 2 -3 -3 2; too> 2 -4 0 4; took -1 -6 5 -3; tooth 5 -5 -4 -3; totally 4 -1 -2 -1;
touch 6 -12 3 -1; touch> -8 0 8 -1; touched 4 -1 0 -2; touching 8 -9 -3 -4; tough 8 -5 -2 -5; tough> 6 -1
-2 -5; tour 7 -6 -5 -2; tow -7 8 -5 -6; towel 7 -6 -3 -1; track 5 -11 3 -13; traffic 4 -4 -1 -1; train 5
-2 -3 -1; training 7 -6 -6 -7; trains 2 -2 -2 0; tram -4 4 0 0; travel 5 -1 -4 -3; travelling 10 -4 -3
-5; travelling> 3 -1 -1 -1; tree -1 3 -1 -2; tried 3 -4 -5 1; trip 0 5 -4 -4; trouble -7 -9 -4 9;
trousers 0 2 -6 -2; truck 3 -3 -1 0; try 8 -7 0 -3; trying -8 12 -2 -6; tuesday -2 1 -2 1; tuesday> -5 2
-4 4; tummy 12 -6 -4 -8; turn -1 -7 3 -1; turned 0 -4 1 -3; turning -6 6 0 0; twang -6 -5 6 -5; twenty 5
-1 -2 -2; twice -6 1 5 1; twice> 8 -8 -8 -5; twig -6 0 6 0; twins 6 -3 0 -6; twist -2 1 -2 -1; twisted -3
-9 3 -1; two 0 1 -4 -1; two> 10 -7 -2 -4; type -2 2 -5 -2; typing 1 -5 -4 -1; typo 1 0 0 0; tyre 8 -7 -2
-3; ugh 4 -3 -2 -1; um 4 -3 -1 -2; unannounced 3 0 -2 -1; unbearable -18 -8 16 -11; under -9 -3 11 -8;
understand 2 0 -2 1; unreal 7 -4 -9 -4; unsubscribe 4 -4 -5 -4; until 2 5 -4 -3; up -4 1 4 -1; up> 5 -1
-3 -2; update 3 0 -1 -1; upper 3 -1 -1 -1; upset 3 -2 -2 -3; urine -10 -5 -6 8; urine> -2 -2 -1 3; us 1 0
-1 0; used 2 -3 -1 2; usual 3 -2 0 0; v 2 0 -1 0; van -1 2 -1 0; version 9 -6 -3 -6; version> 5 -1 -2 -5;
very 1 -2 -3 -1; vet 12 -1 -12 -3; video 2 -2 -2 -1; video> 5 -2 -1 -2; view 6 -6 -1 -2; village 3 -1 0
-2; vision -5 -6 -6 7; vision> -8 -1 -2 8; visit 7 -3 -1 -6; visit> 4 -3 -1 -4; visiting -3 -1 -1 5;
visitors 14 -3 -1 -9; visitors> 1 0 -1 0; voice 5 -4 -4 -10; waist 9 -5 -2 -3; wait 6 -3 -3 -2; waited 6
-5 0 0; waiting 7 -5 -1 -2; wake -10 7 -7 9; wakes -19 21 -6 -8; waking -9 10 -8 -6; walk -12 1 8 -6;
walk> -10 4 3 -12; walked 0 0 -1 -1; walking -8 7 2 2; wall -2 7 -5 -5; want 5 -7 -3 -1; wanted 3 3 0 -6;
ward 4 -6 2 -3; warm -5 -14 12 -5; warm> -2 0 3 0; was 3 -2 -1 -4; was> 3 -2 -3 -2; washing 5 -5 3 -9;
watch 7 -3 -6 -4; watched 0 -1 1 -1; watching 6 -3 -1 -2; water -5 -1 0 1; way -12 -5 10 -5; way> 2 -14
-1 -2; we 5 -2 -1 -5; weak -25 12 -11 -3; weak> -14 -1 -8 4; weaker -9 9 -7 -11; weakness -25 12 -12 0;
weakness> -15 3 -8 0; weather 9 -4 -8 -7; wedding 9 -5 -1 -9; wee -10 -4 -6 7; week 1 3 -3 -7; week> 7 -4
-2 -1; weekend -2 -2 -2 4; weekend> 0 -1 3 -4; weeks 3 4 -3 -10; weeks> 4 -3 -1 0; weight -11 -1 12 -8;
weight> -5 -5 4 -3; weird -4 5 -9 -4; well -3 4 -3 -6; well> 10 -7 -6 -11; went -7 1 -3 6; were 0 1 -1
-2; wet -7 -5 -5 8; what 1 3 -2 -11; whatever -12 10 -5 -5; when -4 1 -5 1; whenever -5 4 -3 -2; where 5
-8 -2 2; which 7 -5 -6 -3; whichever -8 4 -3 -2; while -4 2 0 1; who 4 -2 -2 -2; whole -7 5 -3 4; why 0 2
-5 -4; wife -4 -9 -8 8; wifi 5 -5 0 -2; will -2 0 1 -7; wind 6 -2 -4 -1; window 1 -5 -5 2; windows 3 -2
-4 -1; wine 9 -4 -4 -1; wipe -9 -10 -3 11; wire -2 3 -3 -3; wise 6 -4 -1 -1; wish 3 -2 -2 -2; with 0 1 -2
-2; with> 0 1 -7 -7; without -10 8 -5 2; wk 4 -2 -2 -1; woke -9 10 -5 2; woke> 12 -4 -10 -10; woken -12
12 -4 -3; won 1 -1 4 -5; woohoo 4 -2 -1 -2; wool -7 1 -5 3; woozy -14 11 -4 -8; words -14 -3 -1 14;
words> 0 -1 -3 3; work 6 -3 -2 -2; work> 5 -1 -1 -3; worked 3 -2 -1 0; working 8 -5 0 -4; works 4 -2 -1
-1; works> 7 -6 -2 -3; worried 0 -3 -2 0; worse 3 1 -6 -8; worse> 6 -4 -2 -3; worst -6 -13 7 -8; worth 6
-1 -5 0; would 4 -3 -4 -2; wrist 2 -4 3 -6; wrist> 3 -1 0 -1; wrists 4 -1 -2 -1; write -3 -1 -3 3;
writing 1 -1 1 -3; wrong -7 -2 -1 8; wrote 6 -1 -1 -4; x 4 -1 -1 -1; x> 6 -2 -2 -2; xx 9 -2 -4 -6; yeah 5
-4 -4 -3; year 0 1 -7 -2; years 3 -6 1 -8; yellow 0 -7 4 -3; yep 2 -5 -4 -2; yep> 6 -4 -5 -7; yes 6 -6 -2
-2; yes> 10 -9 -3 -3; yesterday -3 -3 0 -3; yesterday> -1 1 -5 -6; yet 9 -3 -4 -2; yet> 8 -1 -3 -4; yoga
11 -11 -2 -3; you 5 -3 -3 -3; you> 3 -1 -1 -1; young 5 -4 0 -3; your 4 -1 0 -3; yours 5 -3 -2 -3; yours>
5 -4 -3 -3; yup 8 -3 -2 -7; yup> 4 -2 -3 -1; zap -5 5 -5 -5; zero 7 -7 -2 -3; zilch 4 -4 -4 -4; zoo -1 2
-2 0; zoom 4 -1 -2 -1; ⏰ 2 -1 -1 -1; ☕ 9 -7 -7 -7; ♀ 4 -3 -3 -3; ♀> 4 -3 -3 -3; ✅ 3 -3 -2 0; ✅> 5 -3 -3
-4; ✌ -4 5 -4 -4; ✔ 5 -2 -1 -1; ✔> 6 -2 -2 -2; ❌ 5 -3 -3 -3; ❌> 6 -4 -4 -4; ❤ 4 -4 -4 -4; ❤> 4 -4 -4 -4;
🎉 6 -2 -2 -2; 🎉> 6 -2 -2 -2; 🏃 1 -1 0 0; 🏃> 2 -1 0 -1; 🏖 5 -2 -2 -2; 🏼 5 -1 -2 -2; 🏽 4 -1 -2 -2; 🏽> 4 -1
-2 -2; 👋 8 -3 -3 -3; 👋> 8 -3 -3 -3; 👌 4 -4 -3 -4; 👌> 4 -4 -3 -4; 👍 7 -3 -2 -2; 👍> 5 -3 -2 -2; 👎 5 -3 -3
-3; 👎> 6 -3 -4 -4; 💀 1 -5 -3 -1; 💀> 1 -5 -4 -1; 💪 5 -3 -2 -3; 💪> 6 -3 -2 -3; 💯 6 -6 -6 -6; 🔥 5 -4 -4 -4;
🔥> 3 -3 -3 -3; 😂 7 -2 -2 -2; 😂> 4 -1 -1 -2; 😄 3 -2 -2 -2; 😄> 3 -2 -2 -2; 😅 5 -3 -3 -4; 😅> 5 -2 -2 -2; 😊 3
-1 -1 -1; 😊> 4 -1 -1 -2; 😎 4 -3 -4 -4; 😎> 4 -3 -4 -4; 😕 7 2 -2 -5; 😕> 4 2 -2 -5; 😖 5 -2 -2 -1; 😖> 6 -3 -2
-1; 😟 -3 3 0 -2; 😟> -3 3 0 -2; 😢 7 -5 -7 -3; 😢> 7 -5 -7 -3; 😣 5 -2 -4 -1; 😣> 5 -2 -4 -1; 😩 4 -2 -4 -2; 😩>
5 -2 -5 -2; 😬 0 -1 -1 -2; 😬> 0 -1 -1 -2; 😭 1 -4 0 -1; 😭> 4 -4 0 -6; 😰 -3 0 0 3; 😰> -3 0 0 3; 😳 -1 0 1 0;
😳> -1 0 2 0; 😴 4 -3 -3 -3; 😴> 4 -3 -4 -4; 🙂 3 -3 -4 -3; 🙂> 3 -3 -4 -3; 🙈 4 -1 -2 -2; 🙈> 4 -1 -1 -3; 🙌 6
-4 -2 -2; 🙌> 5 -4 -1 -1; 🙏 6 -2 -2 -2; 🙏> 6 -2 -2 -2; 🤒 3 -1 -1 -1; 🤒> 3 -1 -1 -1; 🤣 6 -5 -3 -7; 🤦 3 -1
-1 0; 🤧 3 -3 -3 -3; 🤷 5 -3 -3 -4; 🤷> 4 -3 -2 -4
"""
"""Each entry: a word of at least three replies ("<" first, ">" last, "#" a number, "_" every reply), and its weights in
the order of `suspicion.LEVELS`; 5 is one natural logarithm of the odds."""
