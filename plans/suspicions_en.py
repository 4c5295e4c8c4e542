"""Which words usually go with which warning sign. Written by `python -m tests.bench.doubting`, not by hand."""

WEIGHTS = """
! 6 -4 -3 -2; !> 4 -1 -2 -2; # 5 -1 -2 -2; #> 3 -1 -1 -3; % 7 -3 -2 -1; %> 4 -1 -2 -1; & 3 -4 1 -5; ( 3
-2 0 0; ) 5 -4 -1 -1; )> 3 -1 -1 -1; + 5 -4 -3 -2; , 2 0 -1 -1; ,> 8 -6 -4 -5; - 6 -4 -1 -1; -> 5 -3 -3
-1; . 3 -1 -1 -2; .> 5 -1 -2 -3; / 5 1 -3 -3; 18:30 3 -1 -1 -1; 20:00 3 -1 -1 -1; 3 -5 5 -4 -3; 5:30 3 -1
0 -2; 5:45 8 -7 -2 -3; 6 1 0 0 0; 6:15 4 -3 -2 -2; 6:30 4 -3 -3 -2; 6:30> 4 -3 -3 -4; 6:45 3 -1 -1 -1; 6>
3 -1 0 -2; 7:30 6 -3 -1 -3; 8:30 5 -3 -1 -1; : 6 -3 -2 -2; :> 4 -1 -1 -2; <! 6 -4 -2 -2; <# 1 -4 1 -7; <,
8 -3 -5 -4; <- 2 -1 -1 -1; <. 8 -5 -1 -5; <: 5 -2 -2 -2; <? 10 -4 -5 -1; <a 2 -8 -2 -1; <about 7 -4 -2
-3; <achey 5 -5 -3 -5; <aching 9 -7 -1 -4; <achy 6 -6 -1 -1; <affirmative 7 -2 -3 -5; <after 0 -8 -12 2;
<again 8 -7 -10 -6; <all 6 -5 -9 1; <almost 6 -5 -2 0; <already 3 -10 -8 -1; <alright 4 -3 -4 -3; <am 8
-6 -4 -3; <an -1 2 -1 0; <and 8 -8 -3 -4; <ankle -6 -6 6 -3; <ants 0 6 -5 -4; <anymore 6 -5 -4 -4; <are 3
-3 -2 -2; <arm 0 2 -4 -12; <as 6 -5 0 0; <asdfgh 4 -4 -4 -4; <asdkjh 5 -5 -5 -5; <at 1 0 -5 -6; <aye 4 -4
-4 -3; <baby 6 -3 -1 -1; <back 4 -1 0 -5; <bad 5 -2 0 -4; <bailed 6 -4 -3 -4; <baked 3 -1 0 -2; <bar 2 -1
0 0; <became 3 -7 -9 -4; <because 3 -2 -5 -4; <been 12 -11 -3 -6; <before 6 -2 -5 -8; <bet 3 -3 -4 -3;
<better 4 -1 -1 -1; <between 2 -5 -1 -1; <big -1 -3 1 -1; <bit 4 -2 -1 -4; <bits 8 -4 -7 -8; <black -11
-3 7 -4; <blacked -6 -3 -3 4; <bladder -4 -2 -3 5; <blurred -6 -5 -2 7; <body 9 -5 -1 -4; <bonjour 2 -1 0
0; <boss 3 -3 -3 0; <both -1 2 1 -6; <bought 3 -3 -3 -2; <breathtaking 3 -2 -2 -2; <bridge 2 0 -1 -1;
<bro 1 -3 -3 -1; <broke 5 -5 -6 -3; <bruh 5 -5 -4 -3; <bruise -4 -1 4 -1; <bruised -6 -7 6 -4; <burned 3
-1 -2 0; <burning -14 8 -6 1; <bus 1 -1 0 0; <busy 2 0 -1 -1; <but 8 -5 -8 -2; <buttock 3 -6 0 3; <by 2 1
-3 -4; <calf -2 -5 2 -2; <calves 7 -3 -4 -3; <came -5 -4 0 3; <can -3 1 -1 -3; <cancel 4 -4 -4 -3;
<caught 5 -5 -3 -6; <cba 3 0 -1 -1; <change 4 -2 -1 -1; <cheers 4 -3 -4 -3; <chest 0 -5 -3 2; <choir 8 -6
-8 0; <cleaned 4 -2 -2 0; <coach -1 -4 0 -2; <complete 9 -6 -2 -1; <completed 6 -3 -2 -3; <completely 7
-6 -1 -2; <cooked 3 -2 0 -1; <could 1 4 -1 -4; <covid 7 -4 -2 -5; <crazy 3 0 0 -3; <cut 3 0 -2 -3; <day 3
-1 -1 -1; <dead 10 -14 -2 -2; <dear 7 -5 -3 -1; <did 5 -3 0 0; <dizzy -7 7 -1 -2; <do 3 -10 -3 -2;
<doctor -3 -9 0 5; <does 4 2 -4 -4; <dog 9 -2 -10 -3; <doing 7 -4 -6 -3; <doms 5 -1 -2 -3; <done 3 -2 -3
0; <double 1 -1 -6 0; <down 8 -6 -2 -5; <dropped 3 -7 -1 -7; <drove 1 1 -3 -2; <duck 2 -1 0 -2; <dull 6
-3 -2 0; <dun 5 -4 -3 -3; <during 7 -6 -3 -10; <dying 2 -1 -1 0; <easy 6 -1 -3 -2; <effort 4 -3 -2 -1;
<elbow -7 -6 7 -4; <electric -4 6 -6 -2; <energy 1 0 0 0; <evening 8 -1 -4 -3; <ever -3 -1 -8 1; <every 8
-7 -4 -3; <everything 0 -1 -5 -3; <exam 6 -3 -3 -1; <except 6 -3 -3 -5; <exercise 4 -2 -2 -3; <exercises
5 -1 -4 -1; <ez 3 -2 -2 -2; <face -7 -3 -5 6; <fainted -7 -3 -1 8; <feel 5 -8 -2 5; <feeling 1 0 -1 -6;
<felt 4 -2 0 -7; <fever -6 -3 4 -5; <feverish -9 8 -3 -4; <finally 5 -4 -1 0; <fine 7 -3 -2 -2; <fingers
-12 13 -5 -4; <finish -1 -4 -2 0; <finished 4 -4 -3 -1; <finito 6 -4 -3 -4; <first 4 -5 0 -4; <flu 4 -2
-1 -3; <food 6 -2 -2 -4; <foot 2 -1 -6 -6; <football 7 -2 0 -6; <for 9 -3 -2 -3; <forgot 4 -2 -1 -1; <fr
5 -3 -2 -1; <from 6 -4 -3 -10; <gave 11 -1 -11 -1; <get 2 -2 -2 -4; <going 9 -1 -3 -8; <gone 7 -7 -6 -8;
<good 3 -1 -1 -1; <got 3 -4 -4 -7; <great 4 -2 -1 -2; <groin 1 -12 -4 1; <guests 4 0 -1 -2; <guten 3 -1
-1 -2; <had 3 0 -2 -5; <haha 3 -3 -4 -4; <half 6 -7 -3 -2; <halfway 8 -8 -4 -2; <hamstring -3 -9 6 -4;
<hamstrings 4 -3 -1 0; <hand -6 5 0 -3; <hardly -2 -11 5 -7; <has 4 -6 -2 -5; <have 2 -4 -3 -5; <having 6
-7 -11 3; <head -2 2 -7 -1; <health 1 0 0 -1; <heard -3 -1 3 0; <heart -3 -7 -3 5; <heavy 2 -3 -1 -1;
<hecho 1 0 0 0; <held 4 -3 0 -1; <hello 0 -1 -5 -1; <helped 2 -1 0 0; <here 5 -1 -3 -1; <hey 5 -1 -2 -4;
<hi 5 -2 -6 -1; <hip 3 -2 -3 -5; <hips 6 -4 -3 -2; <hiya 6 -3 -3 -3; <honestly 1 0 0 0; <hope -3 -1 -1 3;
<hot 10 -12 1 -2; <hotel 2 0 -1 0; <how 12 -5 -5 -2; <hurts 2 -1 -6 -4; <i 2 -2 -1 -1; <ich 4 -1 -1 -1;
<idk 4 -4 -4 -4; <ill 5 -2 -2 -2; <in 9 0 -7 -15; <inbox 4 -4 -3 -2; <is -1 0 -2 -6; <it 5 -3 -5 -5; <ja
4 -3 -1 -1; <jaw -15 -7 -8 14; <just 2 1 0 -6; <k 3 -3 -3 -3; <kept 5 -6 -3 -4; <kid 5 -3 -1 -2; <kids 1
0 0 0; <kinda 7 -1 -3 -3; <kindly 7 -3 -2 -3; <knee 4 -5 -2 -6; <knees 10 -10 -2 -3; <l 3 0 -3 -2; <last
2 -1 -9 -1; <late 3 -2 -1 0; <later 9 -4 -3 -2; <left 2 -8 -3 0; <leg 2 -2 -1 -7; <legs 0 5 -3 -14; <less
4 -2 -1 0; <light -9 5 -3 -3; <lighter 7 -3 -6 -1; <like -11 4 -2 -2; <little 4 -1 -2 -3; <load 4 0 -3
-1; <lol 7 -5 -4 -2; <long 3 -3 -3 0; <lost 0 -2 -3 -1; <lovely 1 0 1 -6; <lowkey 2 -1 -1 -1; <lunch 3 -3
-1 -1; <made 4 -1 -2 -2; <managed 8 -2 -1 -6; <many 2 -1 0 -1; <market 2 -2 -1 -1; <mat 8 -1 -4 -3;
<maybe 0 -1 -1 -14; <me 9 -8 -9 -4; <meeting 5 -3 -1 0; <might 3 -2 -3 -3; <migraine 5 -1 -2 -3; <missed
4 -2 -2 -1; <more 6 -2 -2 -2; <morning 4 -5 0 -3; <most 5 -2 -2 -2; <mostly 2 -1 -1 -1; <move 5 -5 -4 -1;
<moving 5 0 -4 -1; <mowed -2 -2 -2 2; <mum 6 -4 -4 -4; <muscle 2 0 -1 0; <must 10 -3 -6 -10; <my 2 -4 -4
3; <nah 4 -4 -3 -3; <nearly 4 -5 -5 -2; <neck 5 -3 -1 -2; <neighbour 7 -2 -2 -4; <new -3 -1 -2 1; <next 3
-2 0 -3; <ngl 4 -1 -1 -2; <nice 2 -1 -1 -3; <night -9 12 -3 -4; <no 2 -3 0 -4; <none 10 -8 -1 -2; <nope 6
-5 -2 -5; <not 12 -8 -3 -5; <nothing 8 -1 -1 -5; <notice -2 4 -3 -3; <noticed -1 4 0 -7; <now 5 -4 -7 -5;
<numb -8 0 -8 5; <numbness -10 6 -8 -1; <of 9 -6 -10 -3; <off 14 -1 -4 -12; <ok 8 -6 -3 -3; <okay 5 -4 -1
-2; <omg 5 -5 1 0; <on 6 -9 -5 3; <one -4 -8 4 -1; <only 11 -5 -6 -4; <or 3 -2 -2 1; <ouch 5 -3 -3 -3;
<oui 3 -3 -3 -2; <our 5 -3 -1 0; <out 5 -5 -4 -4; <outer -2 9 -4 -2; <overslept 6 -2 -2 -1; <pain 4 -1 -4
-1; <palpitations -4 -9 -2 8; <parents -2 -3 3 -2; <part 8 -2 -4 -3; <partly 8 -3 -3 -3; <passed -6 -3 -5
5; <pause 6 -3 -2 -1; <phone 3 -3 0 -2; <physio 3 -3 -2 -4; <picked -1 0 1 0; <pins 1 1 -4 -2; <played -1
-6 2 -5; <please 4 -2 -1 -1; <pop -3 -1 3 -2; <popped -7 -7 8 -2; <pose 3 -2 -1 0; <power 9 -3 -1 -6;
<pressure -1 -6 -2 5; <pretty 4 -1 -1 -4; <probably 3 -3 -3 -4; <pulled 0 -6 2 -12; <put 4 -4 -3 -3;
<quarter 6 0 -2 -4; <quick 3 0 -3 0; <quiet 9 -6 -2 -1; <quit 3 -2 -2 -3; <qx 3 -8 -4 -3; <r 4 -5 -1 -1;
<ran 5 -4 -1 -1; <reached 8 -8 -1 0; <ready 3 -3 -2 -2; <really -3 -10 -8 5; <rehearsal 3 -2 0 0; <rest 2
-1 -1 -1; <right -4 -5 -2 2; <room -7 7 -11 -9; <routine 1 -2 0 1; <said 6 -4 -2 -2; <same 7 -4 -1 -1;
<sat 2 4 -4 -3; <saw 3 -8 -9 1; <school 2 -3 0 0; <send 5 0 0 -4; <session 7 -4 -2 -3; <set 6 -6 -2 -1;
<seven 6 -2 -3 -2; <severe -6 -4 3 0; <sharp 5 -9 8 -3; <shooting -3 5 -4 -7; <shorter 6 -3 -3 -2; <shot
7 -3 -2 -3; <should 11 1 -7 -8; <shoulder -4 -2 6 -3; <show 5 -3 -3 -1; <si 5 -5 -3 -2; <sick 3 -1 -1 -1;
<since -2 0 -4 0; <sir 5 -6 2 -2; <skipped 5 -3 -2 -3; <slept 16 -15 0 0; <slight 5 -4 -6 -5; <slipped -2
0 2 -1; <slurred -4 -3 -2 8; <so 2 -5 -3 -1; <some 5 -17 5 -3; <something -3 -9 4 -2; <sore 11 -6 -4 -2;
<soreness 2 -4 4 -3; <sorry 6 -1 -2 -3; <sorted 3 -3 -3 -2; <speech 1 -1 -2 -1; <spent 0 0 1 -3;
<squeezing -2 -2 -4 3; <started 10 -5 -1 -4; <stiff 3 -1 -1 -1; <stiffness 1 0 -1 -1; <still 7 -6 -3 -12;
<stomach 3 -2 -2 -1; <stop 15 -9 -5 -3; <stopped 6 -8 -2 -2; <streched 3 -2 -2 -2; <stretch 4 -4 -3 0;
<stretched 5 -4 0 -1; <stretches 6 -3 -1 -5; <stretching 6 -1 -2 -4; <stuck 1 0 0 -1; <sudden -4 -9 -6 8;
<suddenly -1 -5 -2 3; <sunny -1 1 0 0; <sure 6 -1 -1 -5; <swam 1 0 -1 -3; <swamped 2 -1 -1 0; <swollen -4
-1 7 -1; <take 3 -2 -4 -1; <tax 1 0 -1 0; <teacher 10 -1 -6 -8; <ten 12 -7 -2 -10; <tender 5 -4 -3 -1;
<thank 3 0 -1 -2; <thanks 7 -3 -2 -2; <that 8 -3 -1 -5; <the 3 -4 -2 -3; <there 0 0 -1 -5; <thigh -8 -9
14 -3; <thing 8 -8 -6 -3; <think 5 0 -2 -4; <this 5 0 -5 -7; <thought 7 -1 -4 -4; <thread 2 -1 -1 0;
<three 5 -2 -1 -2; <threw 9 -6 -7 -3; <throbbing -5 -3 4 -2; <tight 0 -2 -2 3; <tightness 2 -1 -1 0;
<tingling -8 1 -4 2; <tingly -2 6 -3 -1; <to 1 1 -1 -3; <toast 5 -5 0 -1; <today 11 -8 -2 -5; <toes -5 4
-2 -3; <tomorrow 8 -2 -2 -4; <tonight 5 -3 -4 -3; <too 2 -4 1 -6; <took 8 -1 -6 -1; <traffic 6 -3 -2 -1;
<train 4 -3 -1 -1; <travelling 5 -1 -2 -2; <tried 8 0 -6 0; <twice 8 -3 -4 -4; <two 5 -3 -1 -3;
<unbearable -9 -6 8 -5; <unsubscribe 4 -4 -5 -4; <up 0 1 -5 -3; <v 2 0 -1 0; <very 6 -3 -1 -3; <wakes -3
3 -4 -2; <walked 5 -3 -3 -2; <want 3 -3 -1 0; <was 4 -9 -2 -2; <watched 3 -6 -1 -1; <way 10 -9 -9 -7; <we
-1 2 1 -1; <weak -1 9 -4 -9; <weakness -8 4 -5 -3; <week 2 -1 -1 0; <weight -1 2 -11 -5; <well 7 -6 -3
-4; <went 3 2 -3 -13; <wet -13 -3 -3 5; <what -1 -4 2 -4; <when 0 -1 -2 -6; <where 7 0 -1 -6; <which 6 -8
-5 -2; <while 6 -4 -5 -6; <who 7 -3 -5 -3; <whole 3 -4 -4 3; <why 11 -7 -7 -4; <wife 3 0 0 -2; <wifi 3 -3
-1 -2; <will 8 -2 -3 -3; <with 0 -4 0 -4; <woke 1 2 -15 -8; <words -4 0 -1 4; <work 4 -2 -1 -1; <worked 1
0 1 -1; <worse 9 -8 -5 -2; <xx 3 -1 -2 0; <yeah 6 -5 -5 -3; <yep 2 -4 -3 -2; <yes 4 -2 -2 -2; <yesterday
4 -4 0 -2; <you 4 -3 -2 1; <yup 7 -3 -2 -6; <zero 1 0 0 0; <zilch 5 -4 -5 -4; <✅ 5 -4 -4 -3; <✔ 6 -4 -4
-3; <❌ 5 -3 -3 -3; <🎉 7 -2 -2 -2; <👌 3 -3 -3 -3; <👍 7 -3 -3 -2; <👎 6 -3 -3 -3; <💀 3 -4 -3 -3; <💪 5 -4 -4
-3; <🔥 4 -3 -3 -3; <😂 6 -3 -4 -3; <😎 3 -3 -3 -3; <😴 3 -3 -3 -3; <🙌 6 -2 -3 -3; <🤒 5 -1 -2 -2; <🤷 6 -4 -5
-4; = 3 -2 -1 -1; ? 1 -1 -1 -5; ?> 2 -1 0 -7; _ 12 -5 -4 -4; a -2 0 -1 -2; a> -9 5 -8 2; ability 9 -2 -4
-4; able 2 -8 -2 3; about 3 -2 -3 0; about> -1 -3 -3 3; abs 2 -2 -1 -1; accident -7 -7 -6 7; ache 3 -1 -6
-5; ache> 7 -3 -3 -1; aches 12 -3 -7 -4; aches> 0 1 -5 -2; achey 7 -7 -6 -4; achey> 6 -7 -4 -3; achilles
3 -2 0 -1; aching 9 -4 -6 -7; aching> 7 -5 -3 -1; achy 11 -3 -3 -5; achy> 7 -3 -4 -1; acke 6 -4 -4 -1;
across 7 -3 -4 -2; action 1 0 -1 0; actually 8 -6 -1 -2; adn 4 0 -3 -1; advanced 6 -1 -1 -4; af 2 1 -4
-2; af> 2 -1 0 0; affirmative 7 -2 -3 -5; afraid 7 -3 -2 -2; after -4 -1 -1 0; after> 1 -3 -3 -1;
afternoon 1 -3 -2 -1; afternoon> -1 -5 -5 3; afterwards -10 1 6 2; again -3 5 -3 -5; again> 3 -6 -5 -1;
age -1 -12 -7 2; age> 6 -2 -1 -3; ages 5 -5 -2 -4; ago -3 -2 -6 3; air -12 -6 -2 13; airport 6 -5 -2 -7;
alarm 8 -1 0 -7; all -1 0 -1 -1; all> 7 -5 -1 -7; allotment 4 -1 -2 -1; almost 0 -6 -3 2; along -6 7 -5
-13; already 1 2 -6 -4; already> -5 5 -2 -7; alright 4 -3 -4 -3; also -2 -3 -1 3; also> -3 4 -5 -3;
although 9 -5 -1 -7; always 1 2 -1 -2; always> 4 3 -1 -7; am -3 0 -4 2; am> 1 0 -3 -8; amazing 6 -4 -5
-2; an -3 1 -1 0; and -5 2 0 1; and> 5 -5 -3 -13; ang 3 1 -1 -4; ankle -9 -2 8 -10; ankle> 7 -5 -6 -3;
ankles -7 -7 8 -3; another 4 -2 -1 -2; answer -2 -4 6 0; answers 2 0 0 -2; ants -7 9 -6 -8; any 0 -3 2
-6; any> 11 -5 -6 -8; anymore 0 2 -2 -2; anymore> 6 -4 -3 -4; anything 1 -7 -7 5; anyway 0 1 0 -4;
anyway> 2 -1 -5 -3; anywhere 5 -2 -1 -2; apart 6 -6 -1 -5; app 4 -1 0 -2; apples 1 -1 0 0; appointment 8
-5 -1 -4; appointment> 2 0 -1 -1; are 3 -1 -2 -5; are> -3 0 -1 1; area 5 -7 -2 6; arm -10 5 -3 0; arm> -4
-1 4 -4; arms 2 -1 -3 -1; arms> 5 -1 -3 -1; around 0 -9 -1 7; arrived 1 -3 0 -2; arthritis 7 -6 -5 -3; as
-4 7 -5 -6; asdfgh 4 -4 -4 -4; asdkjh 5 -5 -5 -5; ask 7 0 -1 -6; asked 3 -3 -1 -3; asking 3 -4 0 -2;
asleep -5 6 -7 -2; asleep> -1 6 -6 -10; at -1 1 -3 -1; at> 1 0 0 -1; ate 7 -2 -2 -3; atm -8 9 0 -1; attic
0 1 -3 -4; aunt 1 -1 0 0; autocorrect 2 0 0 -2; awake -8 8 -2 -2; away -7 -3 4 -2; away> -2 5 -4 -7;
awful -8 9 -2 -2; aye 4 0 -6 -7; baby 8 -7 -5 -1; back -3 3 -2 -6; back> -2 -3 3 -6; backs 9 -5 -2 -3;
bad -6 -2 -14 3; bad> -1 -8 -3 3; badly -5 2 0 2; bags -5 0 2 2; bailed 5 -3 -2 -4; baked 1 0 -4 0;
bakery -2 2 0 -1; baking 1 0 0 -2; balance 7 -4 -6 -2; balcony 3 -2 -2 -3; ball -4 -2 5 -4; balloon -2 -5
6 -6; balloon> -5 -2 6 -5; balloons 5 -3 -3 0; band 5 -3 -4 -1; bank 2 0 -1 -2; bar 8 -3 -2 -8; barbecue
3 0 -3 0; barely -3 0 0 3; bath 3 -3 -2 -3; bathroom -7 -4 -3 7; battery 5 -1 -1 -4; be 1 0 5 -5; beach 3
-3 -2 -4; beans 3 -2 1 -2; bear -7 -7 8 -6; beat 2 -6 -5 0; beating -11 -1 3 10; beats -11 -2 -2 10;
beats> -5 -3 -2 5; beautiful 7 0 -3 -4; became -6 -1 -1 7; became> -1 3 -3 -6; because 4 -1 -2 -4; become
-4 6 0 -3; bed -1 -1 -2 0; bed> 0 -4 -4 4; bedroom 3 0 -2 -1; been -5 1 0 -3; been> -1 0 -4 4; before -2
-4 -2 4; before> -1 -12 -10 9; beforehand -1 0 1 0; began 4 -5 -3 -2; begin 4 -3 -1 -1; beginning 5 -1 -2
-2; behind -9 -11 2 5; being 0 -2 -7 1; believe 2 0 -3 -5; belly 7 -1 0 -5; below -3 -14 0 3; bend -5 7
-5 -12; bend> 5 -4 -2 -6; bendier 11 -2 -1 -9; bending -5 6 -4 -7; bending> -5 7 -4 -7; bends 1 0 -3 -3;
bent 0 0 -3 0; best 2 -1 0 0; bet 3 -3 -4 -3; better 5 0 -7 -4; better> 9 -9 -3 -5; between 5 -18 -1 16;
beyond 4 -1 -3 -1; bicycle 1 1 0 -2; big -4 1 5 -9; bigger -8 -2 9 -3; bike 0 -4 -1 3; bill 4 -2 0 -6;
bin 2 1 -1 -2; bins 3 -2 -1 -1; birds 6 0 -4 -2; birthday -2 2 -4 -3; biryani 1 0 0 0; biscuit -7 8 -5 4;
bit 1 -1 -8 -1; bit> 1 -1 -3 0; bits 6 -11 -3 4; black -9 -11 6 3; blacked -14 -5 -3 12; bladder -9 -12
-3 12; blanket 3 0 -2 -1; bless 1 0 0 -1; block -3 4 -5 -6; blood 3 -2 -3 -3; blown -7 -5 9 -2; blue -8
-8 4 -1; blue> -9 -7 1 1; blurred -14 -4 -3 15; blurry -11 -6 -4 8; board 4 -3 0 -1; boat 2 -2 3 -8; body
-2 -4 -3 9; body> -5 -10 -1 10; boiled 9 -5 -3 -4; boiler 3 -2 0 -1; boiling 5 -3 -3 -3; bone -1 0 -5 0;
bonjour 2 -1 0 0; book 3 -1 -1 -1; boots 3 -3 -4 -4; bored 10 -5 -8 -4; boredom 3 -1 -1 -1; boring 2 -1 0
-1; boss 6 -3 -1 -3; boss> 3 -2 0 -1; bot 4 -1 -2 0; both -2 0 -1 -2; bothered 10 -4 -8 -5; bottom -7 -5
-7 5; bought 3 -3 -3 -2; bowel -5 -3 -5 4; bowels 0 -4 -2 1; bowling -4 0 4 -1; box 8 -6 0 -1; boxes 2 -3
2 -4; boy 5 -4 -4 -5; boys 3 -1 0 -1; braai 1 -1 -1 -1; brain 3 0 -1 -2; bread 5 -5 0 -1; break 4 -2 -2
-3; breakfast 3 -2 -3 -2; breakfast> 4 -3 -3 0; breast -4 -6 -4 9; breastbone -10 -9 -9 10; breath -12 -5
-10 11; breath> -5 -3 -3 4; breathe -13 -12 -11 16; breathe> -7 -2 -4 7; breathing 10 -1 -6 -10;
breathless -13 -4 -6 12; breathlessness -9 -10 -12 11; breathtaking 5 -5 -1 -6; bridge 5 -2 -3 -9;
bridge> 5 -5 -2 -4; bright 6 0 -5 -1; bring 1 0 0 0; bro 3 -4 -4 -3; bro> 4 -5 -4 -4; broke 4 -3 -3 -4;
broken 11 -9 -9 -8; brother -5 -9 -6 6; brought -2 -4 2 -1; bruh 5 -5 -4 -3; bruise -18 -13 21 -6;
bruise> -6 -1 8 -2; bruised -13 -5 13 -8; brutal 2 -1 0 0; btw 2 -1 0 0; buckets -1 0 0 1; buckled -11 -1
11 0; buckles -10 -11 12 -13; buckling -12 -6 13 -4; bug 3 -2 -2 -2; bug> 1 0 -1 0; building 6 -6 -1 -2;
bum -11 9 -8 4; burned 4 -2 -2 -5; burning -13 14 -4 -4; burst 4 -1 0 -3; bus 0 -4 3 -5; bus> 6 0 -5 -1;
busy 4 -1 -1 0; busy> 6 -1 -2 -2; but 0 2 -2 -2; but> 8 -5 -6 -9; butt 6 -3 -1 -1; buttock -8 -3 -13 7;
buttocks -1 -5 0 6; button 11 -1 -1 -12; buzzing -17 9 -6 -5; by 3 0 -1 -2; c 3 -2 -1 -2; cab 3 -5 -1 -6;
cake 0 1 -2 -4; calf -10 0 9 -8; calf> 0 3 -1 -6; call 4 -2 -1 -1; call> 3 -1 -2 -2; called 9 -2 -6 0;
calling -1 -1 -4 5; calls 7 -4 -2 -5; calm 3 -3 -1 -4; calmed 6 -2 -1 -3; calories 6 -5 -5 -5; calves 2
-3 3 -1; calves> -4 5 -6 -7; came -4 -1 -4 1; came> 8 -1 -6 -6; camera 5 -1 -1 -3; camp 2 -1 -1 0; can -5
-3 -1 5; canada 2 -1 0 0; cancel 4 -4 -4 -4; cancel> 4 -1 -1 -3; cancelled 5 -3 0 -1; candle 8 -7 -1 -2;
candlelight 7 -1 0 -7; canteen 3 -1 0 -1; capitals 3 -2 -1 -2; car 1 -6 2 -1; cards -3 -2 3 0; carpet 0
-1 -3 1; carried 0 -1 6 -3; carry -6 -10 10 -8; carrying 1 0 2 0; cat 8 -5 -4 -4; cat> 3 -2 -2 -2; catch
1 -2 -4 3; cats 1 0 0 0; caught 2 -2 -2 -1; cause -4 -3 -5 6; cba 4 0 -1 -2; ceiling 4 -3 -2 -1; ceiling>
4 -4 -2 -2; celebrated -1 -2 0 1; centre -1 5 -6 -6; certain 7 -3 -1 -8; chair 2 -1 -3 -3; chance 5 -1 -2
-1; chance> 4 -2 -2 -3; change 4 -2 -1 -1; changed 6 -1 -2 -3; changed> 7 -3 -3 -3; changing 1 -5 7 -5;
chaos 1 0 0 0; chat 12 -1 -1 -11; checked -4 5 -5 -9; cheers 4 -3 -4 -3; chest -18 -12 -7 23; chest> -5
-4 -1 9; child 5 -1 -5 -11; children 10 -9 1 -7; chips 3 -1 0 -2; choir 2 -3 -2 2; choir> 9 -2 -2 -6;
christmas -1 -2 1 -2; church 1 0 -3 -1; cinema -4 5 0 0; circles -9 4 6 -12; city 4 -3 0 -2; class 4 -3
-2 1; class> 4 0 0 -3; clean 3 -3 0 -1; cleaned -3 3 0 0; cleared 4 -2 -1 -4; client 1 0 0 -1; clients 5
-4 -1 0; climb -5 0 0 -1; climbed 0 1 -2 -3; climbing -3 -2 -4 5; clock 5 -1 -2 -5; closed 3 0 0 -2; club
0 -4 -1 2; cm 5 -3 0 -2; coach 5 -3 -1 -2; coach> 4 -1 -2 -2; coast 2 -1 -3 -2; cobra 9 -6 -4 -4; coffee
4 -5 -3 -3; coffee> 6 -2 -1 -2; coffees 3 -2 -1 -1; cold 4 -5 -2 2; cold> 1 -3 -2 1; colleague 2 0 -1 0;
colleagues 1 -1 0 0; colour -5 -6 6 -8; come 2 -8 -3 6; comes -10 -2 1 3; comfortable 4 -4 -4 -3;
comfortable> 4 -4 -4 -3; coming -3 4 -1 1; commute 3 -1 -1 -2; company 4 -1 -1 -3; complained 5 -1 -2 -1;
complaints 6 -2 -3 -2; complete 5 -3 1 -5; complete> 2 2 -4 -5; completed 2 3 -3 -4; completed> 7 -5 -4
-3; completely 5 -2 -2 -1; completely> 3 -2 -4 -2; concert 0 5 1 -9; conductor 2 0 -1 -1; conference 7 -1
-1 -4; consciousness -15 -5 -3 13; constant -9 9 -6 -5; constant> 9 -7 -3 -4; constantly -3 3 -3 -2;
control -17 -7 -6 16; cook 2 0 -1 -1; cooked 4 -2 0 -1; cooking 3 -3 -3 -3; cool 3 -3 -2 -3; cool> 3 -3
-2 -3; cork 1 0 2 -2; corner 0 -1 -2 2; correct 3 -1 -1 -2; correction 4 -2 -1 -3; corridor 3 1 -3 -3;
costumes 5 -3 -1 -1; cottage 3 -3 -1 -2; cotton 2 -2 -5 0; couch 8 -2 -1 -5; cough 13 -7 -5 -4; cough> 5
-3 -1 0; could 0 -7 0 4; could> 5 0 -2 -3; count 9 -4 -2 -6; count> 13 -4 -3 -8; counting 10 -5 -7 -3;
country 1 0 0 0; couple 1 4 -2 -4; courbatures 3 -3 0 0; course 4 -1 0 -4; cousin 2 -1 1 -2; cousins 7 -6
-1 -6; covid 7 -3 -1 -5; cow -4 3 -1 -4; crack -19 -12 22 -1; crag 4 -4 0 0; cramp 6 -4 -8 -10; crashed 4
-6 1 -4; crawling -6 9 -3 -5; crazy 4 -7 -2 -2; crazy> -4 -6 1 -2; cream 5 -1 -3 -1; crew 6 -5 -4 -6;
cricket -2 -1 2 -1; cried 1 2 -6 -3; crime 4 0 -2 -2; crochet 5 -4 -2 -1; crossword -3 3 -2 -1; crushed 3
-2 -1 -1; crushing 4 -6 -8 0; cry 1 0 0 0; cup -3 -6 -2 5; cup> 0 -2 0 2; cuppa 6 -3 -2 -1; cups -5 6 -3
-4; current -10 5 -4 -4; curry 5 0 -2 -4; curtain -1 -4 -4 8; curtains 5 0 0 -4; cut 8 -7 0 -1; cut> 3 -3
0 0; cycle 2 0 0 -1; cycled -5 7 -4 -3; dad 11 -5 -4 -12; daily 2 0 0 -2; dance 5 -5 -1 -2; danced 1 -5 3
-2; dancing 8 -4 -1 -8; dark -3 -1 -2 3; dark> 4 -3 0 -4; dash 3 -1 -1 -1; daughter 0 -4 -3 1; dawn 8 -7
-3 -3; day 1 -6 1 -3; day> 7 0 -6 -14; days -3 1 -4 -1; days> 6 -4 -3 1; de 2 -1 -4 -5; dead -4 8 -9 -7;
dead> 2 2 -4 -11; deadline 11 -2 -2 -8; deadlines 13 -12 0 -3; dear 6 -2 -6 0; dear> 7 -2 -1 -6; deep 7
-3 -1 -7; degrees -3 -2 4 -4; delayed 1 0 0 0; deliveries 4 0 0 -4; delivery 0 -3 4 -3; dentist -1 -2 -3
0; denver 4 -3 -1 -1; desk 4 -1 -1 -2; despite -1 1 -3 0; di 7 -5 -2 -3; diagnosed 10 -7 -6 -6;
diagnosed> 5 -3 -3 -5; diagnosis 5 0 -4 -1; did 5 -4 -1 -1; did> 8 -3 -1 -4; died 4 -2 0 -2; diet 2 -1 -5
-7; different 5 -1 -1 -4; difficult 9 -1 -4 -4; difficult> 4 -2 0 -2; digging 8 -4 -2 -2; dinner 0 -3 -2
0; dinner> 7 -5 -4 -2; discomfort 1 -7 -2 0; dishes 4 -1 -2 -1; dishwasher 3 -2 -1 0; dizzy -29 27 -5 -6;
dizzy> -6 5 -4 -4; do 3 -6 -4 -2; do> 3 -6 -2 -2; doctor 7 -3 -8 -8; does -7 1 -4 2; does> 3 1 -12 -3;
dog -2 -5 -4 5; dogs 2 -1 -1 0; doing -2 -3 -3 -1; doing> 9 -8 -5 -12; doms 9 -4 -6 -3; doms> 4 -2 -1 -3;
done 5 -2 -3 -2; done> 7 -3 -3 -6; door 5 -9 -5 -3; doorbell 11 -8 -3 -3; dorm 4 -4 -1 0; double -14 -9 2
12; double> -3 -1 -3 3; down -3 2 -3 -2; down> 3 -8 1 -2; downs -6 7 -1 0; downward 0 0 -1 -2; drank 0 0
0 -2; dress 0 3 -1 -2; drill 2 -3 -1 2; drilling 3 -2 0 -1; drink -1 -8 -7 2; drive 2 -3 -1 -6; driver 1
0 -1 0; driveway 2 0 0 -1; driving -2 -1 4 -2; drooped -8 -2 -3 6; drooping -17 -2 -4 8; drooping> -7 -3
-3 4; droopy -8 0 -1 10; drop -6 7 -2 -2; dropped 2 -3 1 -2; dropping -4 5 -3 -6; drove 1 3 -1 -4; drum 2
-7 3 -5; drunk -1 -2 -1 3; dry -2 0 2 0; duck 3 -3 -2 -3; ducking 10 -4 -5 -8; due 9 -4 -1 -5; dug 6 -4
-7 -4; dull 9 -4 -4 -1; dun 5 -3 -2 -2; during -10 7 -3 0; dusted 3 -3 -2 -3; dusted> 4 -3 -3 -3; duty 1
0 0 0; dying 3 -1 -1 -1; e 8 -8 -7 -4; each 3 -1 -2 -2; earlier 1 -1 -2 -1; early 4 -2 -4 -1; early> 5 -2
-2 -2; ears 3 -2 -2 0; ease -8 9 -2 -5; ease> -3 3 -2 -4; eases -2 5 -2 -1; easier 8 -1 -7 -1; easter 10
2 -2 -3; easy 4 -1 -1 -1; easy> 3 -1 -1 -1; eaten 6 -2 -6 -3; eating 9 -6 -3 -2; effort 4 -2 -1 -1; eggs
2 0 1 -1; eggs> 5 0 -1 -4; ego 5 -2 -1 -2; eight 0 -3 -6 2; eish 3 -5 5 -13; either 8 -5 -2 -1; either> 6
-1 -1 -3; elastic 5 -4 1 -3; elbow 0 -2 -1 -6; elbow> 3 -3 -2 -2; electric -15 11 -5 -8; electricity -7 5
-3 -6; elephant 0 0 -2 3; eleven 8 -5 -1 -4; else 3 2 -5 -3; else> 2 -1 -3 -3; elsewhere 7 -7 -1 0;
elsewhere> 3 -2 -1 -1; emails 5 -3 -1 0; embarrassing -7 -2 -2 7; emergency 3 -2 -2 -1; empty 1 -1 0 0;
end 0 -5 -4 1; end> 1 1 -4 -7; ended 5 -3 -2 -2; endless 1 0 0 0; energy 9 -12 -7 -5; energy> 5 -1 -2 -2;
english 7 -3 -6 0; enough 6 -4 -7 -7; entire 4 -1 -3 -1; entirely 4 -3 0 0; episodes 4 -4 -3 -3; erg 2 -1
0 -1; essays 6 -3 -1 -3; euros -2 -1 2 -2; even -1 -6 -7 7; evening -1 -4 1 -1; evening> 8 -3 -5 -5;
evenings 3 -3 -2 -1; ever -10 5 8 -4; every -6 7 -3 -3; everybody -2 2 0 0; everyone 0 0 -4 -1;
everything -2 0 -3 0; everything> 4 -10 1 -1; everywhere 3 -1 -1 -1; everywhere> 2 -1 -1 -1; exact 2 0 0
-1; exactly 2 -1 0 0; exam 4 -3 -3 -6; exam> 2 0 -1 0; exams 7 -5 -4 -4; except 8 -5 -3 -5; excited 2 0
-1 -1; excitement 3 -2 -1 -1; excuse 5 -4 -1 0; exercise 0 0 -1 -2; exercise> -4 0 -2 -5; exercises 5 -4
-3 -4; exercises> -3 3 -5 -3; exhausted 3 -2 -2 -2; extra 4 -4 -1 0; eye -8 -2 -1 13; eye> -1 -1 -2 4;
eyes 4 -1 -1 -4; eyes> -5 -1 -1 5; ez 4 -3 -3 -4; face -2 -16 -5 9; faint -14 -8 -9 16; fainted -25 -7 -6
27; fainted> -6 -3 -4 6; fair 5 -3 -2 -3; fait 4 -3 -1 -2; fall -2 -5 4 -9; fallen -7 -7 -4 7; falling -3
3 -3 -7; fam 7 -2 -7 -2; family 11 -6 -3 -5; fan 1 1 -2 -1; far 6 -5 -1 -2; farm 5 -5 -5 -7; fasting 3 0
-1 -1; fat 0 -4 11 -1; father -12 -9 -5 13; fave 5 -5 -5 -4; favourite 5 -4 -3 -3; fed 3 -2 -1 -3; feel
-6 2 -1 -3; feeling -5 4 -8 0; feeling> 7 -8 -2 0; feels -1 6 -10 -1; feet -7 8 -4 -7; feet> -4 4 -4 -3;
fell -1 0 -4 1; felt -7 1 6 -2; felt> 7 -8 -9 1; fence 7 -2 -3 -3; fever -16 16 -3 -14; feverish -8 8 -3
-5; few -10 -2 -4 4; film 4 -3 -2 -3; final 4 -1 -1 -2; finally 4 -4 2 -2; finals 3 -2 -1 -1; find 5 -2
-2 -1; fine 4 -3 -5 -5; fine> 1 -1 -5 -2; finger -2 9 -7 -10; fingers -10 13 -3 -10; fingers> 1 -1 -4 -5;
fingertips 0 2 -1 -6; fini 6 -5 -3 -3; finish 5 -3 -3 -4; finish> 1 3 -8 -3; finished 3 0 -4 -2;
finished> 4 -3 -4 -5; finishing 3 -3 -2 -3; finito 6 -4 -3 -4; fire 6 -4 -1 -3; first 3 -2 1 -5; fish 1 0
-6 0; fish> -10 -6 -1 12; fishing 5 1 -7 -1; fit 3 -3 0 -2; five 5 -4 -2 -4; five> 7 -2 -3 -2; fixed 4 -1
-3 -1; flat 3 -6 2 -3; flexible 4 -1 -1 -1; flexor 6 -6 -5 -5; flight -4 -1 1 0; flooded 7 -3 -1 -2;
floor -2 -1 -1 -1; floor> -2 -1 -6 2; floors 2 -2 -1 -1; flow 3 0 -2 -7; flu 9 -4 -2 -5; flu> 4 -3 -2 -1;
flue 7 -7 -7 -6; flue> 1 0 0 -1; fluttering -9 -4 -4 7; flying 0 3 -3 -2; fold -6 8 -5 0; fold> -1 -6 1
4; folds -9 2 9 -1; food 4 -1 -1 -2; foot -15 12 4 -9; foot> 4 -2 -1 -6; football 2 -4 0 -3; football> -1
-2 4 -2; footy 2 -3 3 -3; for -1 2 -4 0; force -9 0 -10 5; forearm 6 2 -1 -2; forearms 5 -3 0 -2; forever
-8 -3 3 -3; forget 2 0 2 -1; forget> 6 -2 -2 -2; forgot 10 -2 -1 -7; forgot> 7 -1 -1 -5; forgotten 3 -1
-1 -1; form 7 -1 -1 -5; forty 4 -1 -1 -3; forward -3 5 -1 1; forward> 5 -5 -1 1; found -3 -5 -7 4; four 3
-3 -2 -3; four> 9 -3 -3 -4; fourth 5 1 -6 0; fr 7 -3 -2 -2; free 8 -6 0 -5; free> 6 -1 -2 -4; freezing -3
3 -1 -5; fresh 4 3 -3 -6; friday -4 2 -3 -9; friday> 6 -3 -2 -5; fridge -2 2 -1 -3; friend 4 -6 -3 2;
friends 6 -2 -4 -1; frog 6 -7 0 -4; from 1 0 -1 -1; from> 8 -1 -5 -2; front 4 -6 -3 -2; frost 2 -2 -1 -4;
froze 5 -5 -1 -1; full 1 -8 -1 0; full> 4 -2 -5 -3; fully 3 -5 -5 -2; fully> 0 -4 -4 1; fun 2 -13 1 -1;
function 2 0 -2 -1; funeral 12 -2 -3 -11; funny -5 -2 -9 4; further 9 -7 -2 -6; game 4 -10 0 -9; gaming 2
-1 -1 0; garage 3 -4 2 -3; garden -1 -5 -1 3; gardening 3 -5 2 -2; gardening> 3 -2 -2 -2; gas 5 0 0 -3;
gasping -7 -6 -4 7; gate 0 -3 0 0; gave -5 -6 9 -8; geese 4 -2 -2 0; get -2 7 -7 -3; get> 9 -9 -4 -8;
getting -5 1 2 -4; girl 5 0 -3 0; girls 5 -4 -1 0; give 6 -2 -4 -3; gives -15 -7 13 -5; giving -5 -3 8
-3; glad 1 -1 0 -1; glass 3 -1 -1 0; glasses 3 1 -2 -6; glute -3 3 -3 -8; glute> -3 5 -7 -1; glutes 10 -1
0 -9; gn 6 -3 -3 -3; go -6 1 0 2; go> -1 2 -1 -4; god 3 -1 -1 -1; god> 6 -3 -2 -2; goes -6 0 2 3; goes> 1
-4 -3 -1; going -3 -1 -9 4; going> -3 5 -2 -3; gone -4 4 -5 -3; gone> 2 1 -4 -4; good 6 1 -5 -5; good> 8
-5 -2 -1; goodness 1 0 -1 0; gorgeous 7 -1 -4 -7; got -4 4 -1 -3; grandchildren 6 -3 -2 -1; granddaughter
2 4 -2 -4; grandkids 3 -3 0 -3; grandson 3 -5 -2 -5; grapefruit -3 0 3 0; grass -6 1 7 0; grate 9 -4 -6
-3; great 5 0 -8 -3; great> 10 -6 -3 -3; green -1 0 2 0; grey 0 -1 0 1; grip -13 10 -4 -8; grippe 11 -3
-1 -8; groin 1 -19 3 12; groin> -8 -9 2 -2; gross 3 0 -1 -2; ground 10 -2 -3 -7; group 0 1 0 0; gtg 9 -7
-1 -2; guess 4 -3 -3 -3; guess> 6 -2 -2 -3; guest 11 -7 -4 -10; guests 6 -2 -1 -3; guests> 5 -1 -1 -2;
guilty 5 -4 -3 -2; guitar 1 0 0 0; guten 3 -1 -1 -2; guy 4 -4 -7 -3; gym 8 -5 -5 -5; gymnast 4 0 -2 -2; h
1 0 0 0; ha 4 -1 -1 -1; had 0 -2 -6 4; had> 7 -5 -7 -8; haha 5 -3 -3 -3; haha> 4 -2 -1 -1; hair 0 -1 5
-4; half 1 -3 -2 2; half> 4 -1 -3 -5; halfway 1 -2 0 -2; halfway> 4 -14 -2 -7; hall 2 2 0 -5; hallway 0
-1 3 -2; hamburg 6 -4 -5 -4; hamstring -4 -3 5 -6; hamstring> -2 -1 2 -1; hamstrings 6 -3 -1 -1;
hamstrings> 8 -2 -5 0; hand -9 11 -4 -8; hand> -7 7 -4 -6; hands -10 9 -3 -9; hanging -9 -5 -5 14;
hanging> -6 0 -4 7; hangover 6 -1 -2 -2; hangs -7 0 4 6; happen 3 -1 -1 -2; happen> 8 -1 -4 -4; happened
-4 -2 -4 -1; happy 8 -5 0 -3; happy> 6 -1 -2 -3; hard 7 -3 -6 0; hard> 5 0 -2 -2; hardly -8 -7 4 0; hart
2 -3 -3 -1; harvest 2 0 0 -1; has -5 0 0 -1; hate 3 -3 -1 -1; hated 3 -3 0 0; have -4 3 -1 -1; have> 10
-1 -7 -5; having -3 4 -5 -1; he 3 -3 -2 -3; head -9 11 -8 -6; head> -2 -2 -3 3; headache 5 -6 -6 -4;
headed -12 9 -3 -4; health 8 -1 -2 -5; hear -5 -4 5 -6; heard -6 -5 8 -5; heart -4 -11 -8 11; heartbeat
-9 -10 -3 7; heat 3 -1 -2 -1; heating 9 -6 -2 -1; heavy -2 -7 -3 6; heavy> 2 -3 -3 2; hecho 2 -2 -1 0;
hedge 2 -1 0 -1; heel 0 0 4 -5; heel> -13 3 3 -3; heels 2 -1 -1 -2; held 4 0 -1 -4; hell 4 -4 0 0; hello
2 -2 -4 -1; hello> 4 -4 -3 -4; help 4 -4 -6 0; help> 1 -7 -7 0; helped 2 -3 -3 0; helps -7 8 -1 0; helps>
-3 3 0 0; hens 3 -2 0 0; her 6 -5 -6 -5; her> 12 -11 -6 -8; here 1 -2 -2 -2; here> 5 -10 -4 -4; hey 6 -2
-1 -3; hi 5 -2 -6 -1; hi> 6 -5 -1 -4; hike 4 -2 0 -1; hike> 3 0 -1 -1; hill 4 -4 -3 -1; him 6 -3 -2 -1;
himself 1 0 0 -1; hinge 5 -10 -4 0; hip -3 3 1 -7; hip> -2 0 -2 -5; hips 0 3 -2 -3; hips> 6 -2 -1 -3; his
3 -9 3 -9; hit 0 -6 -2 3; hiya 6 -3 -3 -3; hold -5 -2 -3 4; holding 4 -3 -9 4; holds 1 -1 0 0; hole -2 -6
5 -7; holiday 4 -7 -1 -1; holiday> 2 -1 -1 0; holidays 2 -1 0 -2; home 3 -2 -3 0; home> 7 -2 -3 -5;
homework 7 -1 -3 -5; honest 8 -1 -5 -4; honestly 6 -5 -2 -3; hooray 8 -7 -2 -2; hope 3 -8 -2 0; hopping
-10 -6 7 -6; horrible 1 -1 0 0; horse 5 -4 -2 -3; hospital 0 -10 -7 6; hot -5 -2 3 -10; hot> 0 -4 1 -3;
hotel 6 -3 -1 -1; hotel> 3 0 -1 -1; hour 2 -4 0 -1; hour> -1 2 -4 2; hours 3 1 0 -3; hours> 3 0 -3 -1;
house 6 -4 -4 -3; house> 0 1 -2 -3; hovering 3 -1 -2 -2; how 2 -2 -5 -1; however 3 3 -3 -4; hr 2 -1 0 0;
hrs 6 -5 -2 -2; huge 5 -4 0 -1; hundred 6 -4 -3 -10; hung -6 1 -5 1; hungry 3 -1 -1 -2; hurt 6 -4 -3 -1;
hurt> 0 -13 2 -5; hurted 6 -5 -1 -1; hurting 6 -1 -5 -6; hurting> 0 0 -3 -4; hurts 1 2 -2 -2; hurts> 2 -1
-8 1; husband 0 -10 -6 7; i 1 -2 -1 1; i> 6 -7 -8 -8; ice -2 -1 4 -1; ich 4 -1 -1 -1; id 3 -2 0 -1; idea
1 0 -1 -1; idk 1 -1 -5 -3; if -8 -3 5 -3; ill 8 -1 -2 -3; ill> 6 -4 -4 -2; impossible 7 -4 -2 -1; in> 4
-3 -2 -2; inbox 4 -3 -2 -2; indoors 4 -3 -2 -5; infection 11 -4 0 -10; inner -2 -5 -2 5; inshallah 4 -1
-2 -1; inshallah> 4 -1 -2 -1; inside 1 -6 0 0; instead 7 -5 -1 -2; instead> 3 -2 -2 -1; interest 8 -4 0
-5; internet 9 -5 -3 -5; interview 2 -2 0 -2; into -1 0 -9 1; ironing -1 -1 6 -4; irregular -11 -8 -6 12;
irregularly -10 -2 -2 9; is -2 -1 1 1; is> 3 0 -10 -7; it 1 -1 0 -3; it> -1 -3 4 -1; itself 0 -1 -3 1;
itself> -10 6 -8 3; ja 4 -3 -1 -1; jab 4 0 0 -4; jam -3 3 -2 -2; jar -3 3 -2 -3; jars 6 -3 -1 -1; jaw -7
-6 -4 6; jaw> -3 -2 -2 6; jelly 6 -6 1 -5; jetty 2 -4 -6 0; jk 6 -2 -2 -2; job 6 -1 -2 -3; join 3 -1 0
-2; joined 5 -2 -2 -1; joint -12 8 6 -6; joke 2 0 0 -2; jokes 6 -6 0 -1; joy 8 -1 0 -7; jumbled -4 0 -1
4; jump 6 -5 4 -6; jumped 8 -3 0 -7; jumper 7 -6 -1 -1; jumping -5 0 0 5; june 7 -7 -2 -3; just -1 -5 -3
2; k 5 -1 -2 -6; k> 3 -3 -3 -3; keep -6 3 -1 0; keeps -11 5 3 -1; kept 1 1 -6 -7; kettle 9 -3 -2 -8; keys
1 0 0 -4; kg 6 -2 -8 -3; kick 4 -3 0 -1; kicked 0 -7 3 -4; kid 14 -12 -5 -6; kids 6 -3 -2 -5; kids> 7 -5
-4 -3; kill 5 -4 -1 -1; killer 4 -2 -1 -1; killing 8 -5 -9 -10; kilo -6 6 -8 -3; kilometres 6 -2 -2 -2;
kilos -5 6 -1 -4; kind 3 -3 -2 -3; kinda 3 -3 -3 -2; kindly 6 -2 -2 -2; kitchen -9 -2 -2 7; kitchen> 4 -3
2 -4; km 4 -4 0 -3; knackered 10 -1 -3 -10; knee -1 -6 7 -7; knee> 3 1 -6 -5; kneeling 0 -5 1 -1; knees 4
-10 1 -3; knees> 6 -2 -2 -4; knitting 2 -1 0 -1; know -1 -2 0 -1; know> -3 -1 -2 3; knows 1 0 0 0; knows>
1 0 0 0; krakow 2 0 -1 -1; l 3 -1 -1 -1; ladder -3 -1 2 -5; ladies 2 -1 0 -2; lads 0 -3 0 -4; lake -1 -1
2 -1; landed 2 0 -1 0; landing 0 -1 2 -2; laptop 5 -3 -3 -1; lasagne 2 -1 -2 0; last 1 -5 1 -2; last> 6 0
-4 -4; lasted -3 5 -2 3; late 6 -3 0 -6; late> 4 -3 -1 -1; lately -5 6 -4 -10; later 4 -1 -2 -3; later> 7
-2 -3 -2; laugh 6 -2 -1 -3; laughed 6 -6 -7 -4; laughing 4 -1 -1 -3; laughing> 2 -3 -4 -1; laundry 8 -7
-3 -8; law 7 0 -1 -7; lawn 1 -2 -3 2; laws 2 0 0 -1; lay 1 3 -3 -3; lazy 4 3 -4 -3; league 3 -1 -2 0;
leaked -2 -1 -4 3; learning 2 -1 0 -1; least -1 -1 -2 -1; leave 4 2 -3 -3; leaves -2 -1 3 -1; lecture 5
-4 -4 -6; lectures 5 0 -3 -2; leeds 10 -9 -1 -2; left 0 -1 1 -2; left> 3 0 -4 -3; leg -11 7 2 -7; leg>
-12 1 0 -4; leggings 7 -1 -2 -5; legs -3 -1 -5 1; legs> -9 2 -4 2; lengths 3 -2 0 -3; less 4 2 -4 -12;
less> 2 -2 0 0; lesson 4 -4 0 -4; let 2 -3 -2 -4; level 8 -3 -4 -4; library 1 0 0 -1; licence 2 0 -1 0;
licking -4 -1 -1 4; lie -1 3 -3 -6; lie> 3 -2 -4 -1; life 1 0 -4 1; lift 2 0 -6 0; lifting 2 -6 -1 -7;
light -7 6 -3 -3; light> 9 -8 -5 -8; lighter 11 -3 -8 -4; lighter> 9 -2 -4 -5; lightheaded -15 15 -5 -5;
lightning -12 11 -4 -8; lights -8 -6 4 4; like -1 1 -1 -2; like> 3 -3 1 -1; liked 3 -2 -2 0; lil 3 2 -10
-8; limping -12 -11 14 -10; line 4 -2 -2 -3; lisbon 2 -1 -1 -1; list 2 -4 -2 -5; list> 7 -4 -7 -4; listen
2 0 0 -2; listening 4 -2 -1 -1; literally -5 0 -1 5; little 7 0 -5 -5; little> 8 -4 -5 -2; live 0 3 -3
-2; living 3 -1 -2 -5; load 1 -11 8 -9; loading 3 0 -2 -1; loads -5 9 -2 -2; loaves 4 -1 0 -3; lol 1 -2
-2 -2; lol> 5 1 -1 -11; long 4 0 -4 -6; longer 10 -3 -4 -9; loo -1 -4 3 2; look -3 0 -7 2; looked 8 0 -3
-6; looking 6 -5 0 0; looks 1 -4 2 -6; loose 8 -5 -3 -13; lose -2 3 -4 -4; loser 8 -7 -2 -3; losing -10 3
-4 3; loss -7 13 -12 -9; lost -9 2 -5 6; lost> 8 -6 -5 -6; lot 1 -1 -4 -8; lot> 2 1 -8 -4; lots 3 0 -3
-1; loud -6 -2 5 -5; love 6 -2 -8 -5; loved 4 1 -1 -2; lovely 4 -4 0 -7; lovely> 4 -2 -3 -2; low -2 -1 -1
2; lower 3 -3 1 -4; lowkey 2 -1 -1 -1; luck 3 -2 0 0; lunch 3 -1 -5 -2; lunch> 2 -3 0 -3; lunchtime 3 -1
-2 -1; lunge 3 -5 0 -4; lunge> 4 -5 1 -5; lunges 3 -5 -2 -1; lunges> 4 -3 -2 -4; lvl 6 -5 -1 -2; lying -8
0 -4 7; lyon 2 -1 0 0; m 3 -1 0 -1; ma 2 -5 1 -6; machine 5 0 -4 0; mad -7 -1 0 1; mad> -2 3 -4 -3; madam
5 -4 -6 -3; made 1 -5 2 -3; make 3 -3 -4 -2; makes -3 -2 -10 1; making -2 -4 -1 3; man 7 -8 -2 -1; man> 5
-3 0 -1; manage 11 -6 -7 -3; managed 6 -4 -1 -3; manila -4 0 0 5; many 7 -3 -5 -2; marathon 3 -1 -1 -2;
margaret 8 -8 -3 -1; mark 3 -4 0 -2; market 4 -2 -1 -1; marking 1 0 -1 -1; married 4 -2 0 -2; mat 2 -6 -3
0; mat> 6 -6 -8 -1; match 1 -2 2 -1; mate 7 -2 -4 -2; mate> 8 -3 -3 -3; mates 2 -4 -3 1; maths 6 -4 -3
-2; matter 4 -3 -4 -1; max 5 -4 -5 -5; may 7 -11 0 -2; maybe -8 -2 -2 4; maybe> 8 -5 -9 -9; me -3 1 -1
-4; me> -1 -3 -1 -2; mean 4 -3 -5 1; mean> 3 -2 -1 -3; means 6 -1 -5 0; meant 6 -6 -2 -1; medicine 4 -2
-6 -3; meeting 7 -4 -1 -8; meeting> 3 -1 -2 -1; meetings 6 -3 -1 -2; meetings> 6 -1 -1 -3; melon -5 -1 7
-4; memory 5 -5 -2 -7; men 3 0 -2 0; mention -6 4 0 -3; mess 3 0 0 -3; message 5 -1 -1 -3; messages 4 -2
-2 -2; messages> 4 -2 -1 -1; met -2 0 2 -1; mid 4 -4 -3 -1; middle -4 4 -5 -1; midnight 2 -5 1 -3; might
2 -3 0 -3; migraine 12 -7 -2 -4; migraine> 2 0 -1 0; miles 1 0 -3 -3; milk 6 -4 -1 -7; min 0 -5 -1 -1;
min> -4 0 -3 0; mind 0 -3 -3 -3; mine -2 -10 -6 5; mins 2 -5 -1 1; minus 3 -3 -2 -4; minute 0 -6 -4 2;
minute> -1 -7 -7 6; minutes 1 -1 -1 2; minutes> -1 -5 -4 2; miss 8 -1 -7 -2; miss> 7 -3 -7 -2; missed 8
-2 -3 -4; missing -7 -4 -1 7; mom 3 -1 -1 -1; moment -8 5 -6 6; mon 3 4 -1 -5; monday 4 -2 -4 -3; monday>
3 -3 -3 -1; month -6 7 -3 -4; months -4 4 -1 -4; mood 5 -1 -1 -1; mood> 5 -3 -4 -3; moon 3 -1 0 -1; more
-1 0 -3 0; more> -4 1 -2 3; morgen 2 -1 -1 0; morning 3 -4 -1 -1; morning> 0 1 -3 -2; mornings 1 0 0 -1;
mortifying 9 -5 -5 -7; most 6 -1 -2 -2; most> 7 -2 -2 -3; mostly 5 0 -1 -3; mother -4 -7 -6 9; motivation
8 -3 -4 -4; motivation> 4 -3 -5 -2; mountain 5 -5 0 -3; mouth -9 -10 -4 12; move 4 6 -8 -6; moved -2 3 -1
-2; movements 5 -2 -3 -2; movers -1 1 0 0; moves 4 -4 -2 -4; moving 6 -2 -1 -3; mowed 0 -2 -2 2; msg -4
-4 -2 5; msgs 6 -3 -1 -2; much 0 -4 2 -3; much> 2 -2 0 -3; mug 1 -2 0 2; mum 1 -5 -4 0; murder 3 0 -2 0;
murdered 5 -3 -2 0; muscle 3 -6 3 -6; muscles 5 -4 -2 -2; museum 8 -6 -2 -6; music 0 4 -1 -4; must -6 -4
-4 7; my -4 0 2 1; myself -8 -12 -7 12; myself> -7 -1 -1 8; na 2 -1 0 0; nah 4 -4 -3 -3; nah> 4 -3 -4 -3;
name 5 -6 -4 2; names 9 -8 -3 -5; nan 2 -1 0 0; nap 4 -3 -1 -4; napped 1 -1 0 0; nasty 3 0 -1 -2; near 5
-1 -2 -1; nearly -2 -6 -2 1; neck 5 0 -3 -3; neck> -4 0 2 -2; need -3 -5 -3 4; needed 7 -5 -1 -4; needle
3 -1 -2 -2; needles -10 10 -4 -3; needs 3 -4 -3 -3; neighbor -2 0 2 0; neighbour -10 -2 -4 9; neighbours
4 -3 0 -3; nephew 5 -4 -1 -1; nervous 1 3 -2 -2; netflix 3 -1 -1 -1; never 5 -4 -4 -6; new -1 -6 -2 3;
new> -3 -4 -3 3; news 5 -4 -4 0; next 0 -8 -7 5; ngl 3 -2 -2 1; ngl> 6 -3 -2 -3; nice 1 0 -1 -6; nice> 4
-4 -8 -3; nicely 2 -3 2 0; niece -5 0 0 5; niggle 7 -3 -4 -1; night -11 10 -6 -1; night> 5 -6 -1 -3;
nights -6 9 -7 -11; nine -1 -2 1 -2; nite 1 -1 1 -1; no -1 0 2 -4; no> 11 -3 -6 -3; nobody -5 -6 5 -3;
noise -3 2 2 -1; none 6 -2 -2 -1; none> 9 -4 -1 -6; noon 4 -5 -1 3; noon> 10 -9 -1 -6; nope 6 -4 -2 -4;
nope> 4 -1 -2 -1; normal 4 3 -9 -7; nose 10 -3 -3 -6; not -5 -1 1 2; note 4 -2 -2 -1; nothing 1 -6 -5 2;
nothing> 1 -8 -6 3; notice -8 0 -5 2; noticed -4 3 1 1; noticing -4 -4 -3 4; novel 4 -3 -1 -1; now -3 -2
2 1; now> 2 -1 -3 -7; nowhere -10 -5 -7 13; numb -21 13 -10 4; numb> -9 4 -5 2; number 6 -4 -2 -1;
numbness -19 13 -11 -1; nursery 4 -1 -2 -1; o 3 -3 -1 -1; obviously 4 -4 -4 -2; oclock 4 -6 -3 0; oclock>
3 0 -1 -2; odd 3 -6 -4 2; of 0 0 -2 -1; of> 4 -4 -6 -3; off 1 -8 1 -3; off> 5 -2 -4 -4; office 1 -4 -2 0;
office> 5 -1 -2 -7; oh 5 0 0 -4; ok -1 -2 -7 -3; ok> 2 -1 -3 -5; okay 3 2 -2 -7; old 5 2 -1 -4; omg 5 -5
1 0; omg> 2 -1 -1 -1; on -3 -4 2 -1; on> 0 2 -4 -7; once -1 -6 -4 6; once> 6 0 -1 -5; one -2 -4 -2 1;
one> 6 1 -6 -10; ones 4 -5 -4 -7; ones> 3 -3 -3 -5; only 1 -2 0 -2; only> 4 -2 -2 -4; oops 6 -2 -1 -5;
open 5 -1 -3 -7; opened 12 -9 -6 -11; opener 8 -4 -4 -8; operation 6 -10 6 -14; or 9 -3 1 -12; or> 3 -2
-3 -2; orchestra 5 -4 -2 0; osteoporosis 5 -4 -1 -2; other -3 -10 7 -6; other> -2 -3 3 -2; others 4 -1 -2
-1; others> 3 -1 -3 -2; otherwise 4 0 -2 -4; ouch 5 -3 -2 -3; ouch> 6 -4 -4 -4; oui 3 -3 -3 -2; our 6 -5
-1 -1; out -2 -7 1 4; out> 3 -6 -7 -1; outer -1 9 -3 -8; outside 4 -1 -5 -6; oven 4 -1 -3 0; over -6 -1
-3 4; over> -5 8 -13 -14; overnight -10 -6 10 -7; overslept 6 -3 -2 -2; overslept> 6 -4 -2 -2; overtime 8
-4 -1 -5; ow 8 -6 -6 -4; own 5 -2 -2 -2; packed 2 0 -1 -5; pages 1 -1 0 -1; paid 4 -3 0 -1; pain 0 2 -3
0; pain> -4 -3 1 -1; painful 3 -5 -2 -5; painful> 5 -4 -5 -5; paining 2 -3 -7 -2; paining> -4 5 -9 -16;
pains -11 3 -13 4; paint 3 -2 0 -1; painted 3 -2 -3 -1; palpitations -17 -13 -8 19; palpitations> -9 -5
-3 9; pan 1 0 0 0; pancakes 5 -2 -1 -2; paper -16 -8 -11 16; papers 0 -1 0 0; parcel 6 -5 -1 -1; parents
2 -3 3 -3; park 3 -2 3 -7; parked -8 -3 -5 7; parking 1 1 -1 -5; part 5 0 -2 -2; part> 4 -2 -1 -2; partly
8 -3 -3 -3; party 5 -3 -1 -2; pass -5 -12 -7 11; passed -16 -6 -6 15; past 0 1 -1 -1; pasta 4 -1 -1 -1;
patch 0 -2 2 -8; patients 7 -3 -7 -7; pause 5 -3 -1 -2; pause> 8 -2 -2 -4; peace 5 -4 -4 -5; peasy 1 -1
-1 0; pee -12 -14 -7 19; pee> -5 -4 -5 6; people 0 1 -1 -2; percent 6 -5 -1 -3; percent> 7 -1 -1 -6;
perhaps 6 0 -4 -5; period 5 -5 -2 -2; period> 3 -3 -2 -2; person 2 0 -1 0; phone 5 0 -9 -3; photo 5 -3 -2
-1; photos -3 0 3 0; physio 3 -3 -3 -4; piano 10 -6 -1 -4; pick 8 0 -2 -7; picture 4 -6 -3 -2; pictures 6
-4 -3 -1; piece 1 0 -1 0; pieces 4 0 0 -4; pigeon 8 -1 -2 -5; pillow -2 5 -3 -4; pinky -4 7 -3 -12; pins
-8 9 -3 -3; pit -8 0 8 0; pitch 0 2 0 -2; pizza 4 -3 -3 -4; place -6 -5 -4 10; plan 7 -6 -3 -4; plan> 1 0
0 -1; plane 5 -1 -3 -2; plank 6 -4 -2 -5; plank> 3 -2 -5 -3; planks 5 -4 2 -4; planks> 4 -6 4 -6; planned
9 -7 -4 -1; plant 2 -1 -1 0; planted 4 -5 -1 -3; plants 3 -3 -3 -2; plate 0 -2 0 -1; platform 2 0 -1 -1;
play 3 -3 -1 -1; played 0 -5 1 -4; playing 1 0 -7 -2; playlist 3 -1 -1 -2; pleasant 3 -2 -1 -1; please 5
-2 -1 -1; please> 5 -3 -3 -2; pleased 3 -3 -3 -5; pleasure 2 -1 -1 -1; plumber 6 -4 0 -1; plums 6 -4 -1
0; plus -11 11 -2 -2; pm 4 -2 -1 -1; pm> 4 -3 -4 -2; point 8 -5 -4 -2; poisoning 5 -1 -1 -3; pool 5 -4 -1
-5; poor 6 -5 -5 0; poorly 9 -6 -4 -5; pop -21 -9 23 -2; pop> -3 -2 3 -4; popcorn 4 0 -4 -3; popped -22
-10 23 -5; popped> -5 -1 6 -1; porch 6 -3 -7 -6; porridge 7 -3 -1 -2; porridge> 5 0 -2 -3; pose 2 1 -4
-5; pose> 7 -6 -2 -2; poses 1 0 -1 0; position -4 6 -1 -8; possible -2 -5 4 -3; postman 3 -1 -1 -3; pot 3
-1 -2 0; potatoes 4 -1 0 -2; pounds 2 1 0 -4; power -3 10 -12 -11; practice 5 -8 5 -4; pray 2 -2 0 0;
prefer 3 -2 0 -1; pregnant 6 -2 -2 -5; pregnant> 6 -4 -3 -4; press 4 -1 -2 -2; pressed -3 -8 -7 7;
pressing -4 -10 -9 12; pressure -14 -3 -3 12; pressure> -3 -2 2 2; pretty 4 -1 -2 -1; prickling -12 12 -9
-5; prob 4 -10 -6 -2; probably 3 -3 -3 -3; problem 2 -6 -4 0; problem> 4 -9 -9 -2; problems 5 -4 -6 -5;
program 10 -4 -3 -4; programme 6 -2 -1 -3; programme> 4 -2 -2 -3; project 2 0 -1 -1; promise 6 -4 -2 -2;
promise> 3 -1 -1 -1; proper -9 5 -1 -3; properly -7 2 -5 2; properly> -5 3 -6 -1; proud 4 0 -1 -2; pub -1
1 0 -1; puffed -4 -4 5 -2; puffy -5 -4 5 -4; pull 14 -9 -6 -8; pulled 2 -10 -1 -6; puncture 1 -1 0 0;
pune 4 0 -3 -1; puppy 7 -7 -3 -1; purple -8 -10 10 -5; push -6 4 -3 -4; pushing 3 -1 -1 -1; put 1 -13 6
-9; putting 3 -1 -1 -2; pyjamas 6 -5 -7 -6; quads 6 -3 -3 -1; quads> 2 -1 0 -1; quarter 4 0 -1 -2;
quarters 3 -1 -2 0; question 7 -8 -6 -6; queue 4 -5 -3 0; quick 3 0 -2 -2; quiet 0 3 1 -1; quit 5 -9 -6
-2; quit> -5 -3 -4 5; quite 2 0 -3 1; quiz 2 -1 0 -1; qx 1 -1 -2 -4; qx> -4 1 -1 -2; r 3 -2 -2 -1; race 4
-5 -5 -1; racing -10 -5 -2 11; radiates -8 11 -9 0; radio 8 -5 -6 -3; rain 11 -10 -5 -8; rained 5 -1 -2
-2; raining 9 -10 -1 -2; rainy -1 3 -1 0; ramadan 4 -3 0 -1; ran 2 2 -2 -2; rang 6 0 -1 -4; rang> 3 -2 -1
-1; rate 1 0 -3 -2; rather 3 -1 -2 -1; rd 2 -5 0 -1; reach 2 0 -2 -1; reached 2 -3 2 -2; read 0 3 -1 -3;
reading 4 -3 -2 -5; ready 1 3 -2 -2; real 5 -1 -2 -3; really -1 -1 -2 -1; reason -8 12 -10 -9; receive 2
0 -1 0; reckon 2 -1 0 -1; record 3 0 -2 0; red -5 -3 6 0; regatta 0 -2 0 2; regular -11 -1 -1 11;
rehearsal 2 -1 -1 -4; remember 4 -10 -7 0; remember> 5 -3 -4 -12; reminder 5 -2 -4 0; reminders 3 -1 -2
-1; rep 0 -4 3 -2; repaired 3 -2 -3 -4; report 11 -6 -8 -7; report> 10 -1 -11 -5; reports 1 0 0 0; reps 5
-4 -2 -1; rest 8 -11 -2 -3; rest> 4 -3 -2 -1; restaurant 12 -3 -11 -11; results 3 -3 -2 -3; reunion 7 -1
0 -6; revision 6 -3 -2 -4; reward 7 -4 -2 -1; rhythm -5 0 0 5; ribs -5 -4 5 0; rice 4 -4 -3 -3; ride 3 -1
-3 -3; right 1 1 0 -4; right> 3 -3 -1 -8; ring -7 2 4 -6; ringing 2 0 -1 -1; river 3 -2 -4 -5; road 7 -5
-3 -5; rode 3 -1 -1 -1; roll -4 6 -5 -15; rolled 0 -1 1 -3; rolls 8 -8 -5 0; romantic 1 -1 0 0; roof 2 0
-4 -5; room -1 3 -2 -4; room> -1 -1 3 -1; roommate 5 -2 -1 -3; roses -1 1 0 -5; rotten 6 -3 0 -3; rough 7
-6 0 0; roughly 5 -1 -3 0; round -1 -2 -2 0; round> -1 -10 -1 2; rounds 3 -5 1 0; rounds> 5 -5 -4 -5;
routine 10 -7 -1 -2; row -1 -2 -1 -1; rowing 9 -7 -6 -3; rt 8 -7 -2 -1; rubber -8 -4 9 0; rug 5 -3 -3 0;
rugby 3 -1 -1 0; run 3 1 -3 -3; run> 5 -1 -1 -2; running -3 5 -7 -4; runs -13 13 -6 -6; rush 1 -1 0 0; s
2 -2 1 -1; sad 5 -8 -1 -3; saddle -5 -7 -2 8; said 5 -2 -1 -2; sale 1 0 0 -1; salon 5 -4 -1 0; same 4 -3
-4 -5; same> 4 -4 -5 -3; sang 2 -2 -4 -5; sat -5 0 -3 4; saturday 4 -3 0 -1; saw 1 -4 -8 1; say 0 0 -2 1;
say> 3 -1 -1 -2; says 0 -3 -4 2; scale 9 -3 -5 -2; scale> 7 -2 -6 -1; scared 8 -5 0 -2; scary -10 -2 -1
5; schedule 7 -5 -2 -1; school -1 2 1 -2; school> 8 -6 -4 -8; scones -2 0 3 -3; score 6 -6 0 0; scored -1
0 1 -1; scratch 5 -3 -1 0; screaming 5 -4 -4 0; screen -5 -5 -6 5; sea -2 0 5 -4; seaside 2 -2 0 0; seat
-1 6 -9 -1; seated -5 2 2 -5; sec -5 5 -6 -3; second 0 -2 -8 3; second> 3 -4 -5 1; seconds -5 -3 -1 6;
seconds> 2 -3 -2 0; secs -5 -3 -2 6; see -7 -3 -6 9; seeing -9 -9 -6 9; send 4 -1 -1 -1; sending 5 -2 -2
-1; sent 2 -1 0 0; sentence -5 -3 -3 6; series 3 -4 -3 -3; session 2 -2 -1 -2; session> 5 -4 -6 -3;
sessions 3 -1 -1 -1; set 2 1 -5 -9; set> -3 4 -8 -4; sets 6 -2 -2 -1; sets> 3 0 -2 -2; settle -6 6 -4 -2;
settled 5 -5 -6 -4; seven 4 -1 -1 -3; seven> 7 -3 -3 -3; severe -22 -7 18 5; sewing 3 -13 -3 -2; shake 11
-8 -3 0; shame 1 -1 2 -2; sharp 7 -8 8 -1; sharp> 5 -1 -3 -1; she 3 -4 0 -5; shedding 4 0 -3 -1; shift 8
-3 -3 -7; shift> 3 -5 -7 -1; shifts 1 -1 0 0; shin -8 -3 7 -7; shin> -3 -1 4 0; shins 7 -1 -4 -2;
shivering -12 13 -7 -10; shock -6 -2 4 -5; shoe -2 -3 6 -2; shoes 5 -3 -9 -3; shooting -19 11 0 -3;
shoots -8 8 -8 -6; shop 9 -2 -1 -6; shopping -2 -1 4 -1; shops 5 -3 -4 -8; short -7 -4 -4 8; short> 7 -1
-4 -10; shorter 6 -2 -2 -2; shorter> 6 -3 -2 -4; shortness -9 -3 -3 3; shot 2 -1 -3 -2; should -7 -2 6
-5; shoulder -1 -3 5 -5; shoulder> 5 -5 -3 -3; shoulders 6 -4 -1 -1; shoulders> 6 -3 -3 -3; shouted 9 -6
-1 -6; shovelled 1 0 0 0; show 4 -3 -3 -3; showed 5 -5 -1 -2; shower -4 -6 -4 6; shows 4 -6 -2 0; shut 8
-1 -3 -4; si 5 -5 -3 -2; sick 9 -3 -1 -5; sick> 6 -1 -3 -1; side -4 -8 -4 5; side> -2 1 -4 -8; sides 6 -5
-1 -3; sides> 3 -3 -2 0; sight -11 -7 -4 8; sign 3 -2 0 0; signed 7 -3 -3 -6; simply 1 0 0 0; since -8 -2
-3 3; since> 1 -5 -7 1; sing 1 0 0 0; singing 5 0 -3 -1; single 5 -1 -2 -1; sink -4 -2 -1 4; sir 6 -7 2
-1; sir> 5 -4 -2 -5; sister 0 -5 1 -5; sit -3 -3 -3 7; sit> -3 4 -4 -8; sits 6 -5 -1 -1; sitting -6 -10
-2 7; situation 3 -1 -2 0; six 4 -7 -5 -3; six> 5 -5 -5 -6; size -4 -7 5 -4; skin -4 4 -7 2; skip 8 -5 -6
-4; skipped 7 -5 -3 -3; skipped> 9 -3 -4 -9; skipping 0 -12 -4 6; skipping> 8 -9 -12 -7; skips -9 -5 -3
5; slammed -3 -2 3 -1; slay 6 -5 -2 -5; sleep -6 9 -10 -9; sleep> -3 4 -9 -8; sleeping 1 2 -2 -6; sleeps
-11 12 -9 -9; slept 4 1 -1 -6; slight 4 -2 -5 -5; slip 9 -3 -3 -9; slipped 1 -8 5 -7; slipper -3 -8 3 -6;
slot 8 -8 -7 -6; slow 4 -4 -1 -1; slowly 5 -6 -4 -4; slurred -16 -4 -5 15; slurred> -7 -4 -3 11; small 5
-4 -5 -5; smells 3 -2 -1 -2; smoke 5 -1 0 -3; smth -4 -1 4 0; smug 7 -4 -1 -6; snap -14 -9 16 -3; snapped
-11 -7 13 -4; snow 4 -2 -2 -1; snowed 2 -1 -1 -1; snowing 4 -2 -1 0; so 2 -2 -1 -4; so> 2 2 -9 -8; soaked
8 -4 -5 -8; sock 0 2 -5 -16; socks 2 0 0 -2; sofa 3 -2 0 0; sole -4 9 -1 -11; sole> -1 6 -1 -6; soles -3
3 -3 -3; solid 6 -5 -1 0; some 2 -1 -5 -6; somebody -6 -6 -3 7; someone -10 1 6 0; something -7 -8 8 -2;
somewhere 6 -2 -1 -4; son 7 -4 -3 -5; song 3 0 -2 -3; sore 6 0 -5 -4; sore> 7 -5 -3 -2; soreness 5 -5 -3
-3; sorry 4 -3 -1 -1; sorry> 4 -1 -2 -1; sorted 3 -2 -3 -2; sound -11 -10 12 -2; soup -7 6 -3 0; space 5
-1 -3 -1; spare 4 -3 -2 0; speak -10 -6 -3 9; special -3 4 2 -2; speech -10 -5 -5 11; speech> -6 -1 -1 7;
spent 1 1 0 -2; spin 5 -2 -1 -2; spinning -11 8 -2 -4; split 3 -1 -1 -1; splits 4 -3 -3 -2; spot 2 -1 0
0; spreadsheets 11 -6 -12 -6; squat 1 1 -4 -2; squats -1 2 -2 -2; squats> 0 1 -2 -1; squeezed 7 -1 0 -7;
squeezing -4 -3 -5 6; stabbing 3 -15 6 2; staff 4 0 0 -3; stage 5 0 0 -4; stairs -11 -2 2 1; stairs> -2
-2 -1 -13; stamp 8 -6 -7 -6; stand -5 -10 10 -6; standing -8 10 -5 -2; stared 3 -1 0 -1; staring 2 -1 -1
-1; start 4 -2 0 -1; started 2 -10 -3 3; started> 11 -2 -5 -8; starting 4 -1 -1 -2; starts -1 2 0 0;
state 6 -4 -1 -5; static -6 7 -8 -3; station 8 -1 -3 -4; stay -4 7 -3 -7; stayed 2 -1 0 -1; staying 10 -9
-3 -1; stays -7 5 -5 2; step -13 -10 12 2; steps -2 -4 -7 3; stiff 10 -7 -1 -2; stiff> 3 -1 -1 -2;
stiffness 7 -6 -1 -1; still -7 6 -4 0; still> 4 -8 -4 6; stinking 12 -2 -5 -6; stomach 11 -6 -3 -12;
stone -2 0 -5 -2; stood -3 2 -3 1; stop -2 1 -3 -6; stop> -2 5 1 -3; stopped -2 1 -1 -3; stopped> 0 1 -1
-6; stopping 0 5 -6 -2; stops -1 -5 -10 3; storm 8 -5 -3 -1; story 4 0 0 -4; stove 5 -3 -3 -3; straight 6
-2 -4 -8; strap 3 -1 -1 -1; strap> 7 -3 -2 -3; streak 4 -1 -2 -1; streaming 5 -13 -4 -3; streched 3 -2 -2
-2; street 4 -2 -1 -1; strength -15 10 -7 -4; stress 7 -3 -4 -6; stretch 1 1 -2 -3; stretch> -1 2 -6 -4;
stretched 7 -8 -3 -2; stretches 0 -3 0 -1; stretches> 6 -1 -4 -3; stretching 3 -4 0 -1; stretching> 3 0
-4 -1; strike 1 0 0 0; string 3 -3 -1 -4; strings 1 -1 0 -1; strong 5 -17 7 -1; stuck 7 -3 0 -4; stuff 5
-4 -1 -4; such -6 -4 3 1; sudden -9 -19 -4 20; sudden> -2 -3 0 3; suddenly -4 -23 -6 16; suddenly> 4 -6
-4 1; sugar -2 -1 -1 2; sun 4 -3 -1 -4; sunday -1 3 -3 -3; sunday> 3 0 -3 -3; sunny 3 0 -3 0; sunrise 4
-3 -2 -3; sunset 4 -1 -5 -3; super 0 2 -1 -3; supermarket 3 0 -6 0; supper 5 -2 -3 0; sure 0 -4 -1 -1;
sure> 10 -4 -5 -11; surgery 7 -6 -6 -7; swam 1 0 -1 -3; swamped 8 -7 -2 -9; swear 8 -5 -10 -12; sweat -1
-5 -4 3; sweat> -2 -3 -1 2; sweating -10 -5 -2 8; sweating> -6 -5 -3 6; sweaty 3 -2 -3 -2; swell -4 -8 4
-6; swelled -16 -8 17 -6; swelling -19 -13 20 -8; swim -1 -3 0 1; swimming 2 -3 1 -3; switch 6 -3 -3 -3;
swole -9 -5 9 -2; swollen -20 -7 23 -4; swollen> -6 -2 6 -1; table 5 -9 -7 4; tablets 4 -2 -9 -6; take 2
-7 4 -7; taking 1 -4 3 -7; talk -2 -3 -3 2; talked 1 0 -1 0; talks 1 -1 0 0; tapped 4 0 -3 -6; target 2
-2 0 0; targets 3 -2 0 -1; tax 4 -1 -3 0; tbh 6 -2 -2 -2; tbh> 6 -4 -4 -2; tea -2 1 -1 -1; tea> 4 -3 -3
2; teacher 7 -3 -2 -2; teacher> 3 0 -1 -1; team 5 -2 1 -5; teething 6 -7 -2 1; telephone 6 -6 -3 -7; tell
-5 6 0 2; telly -2 5 -7 -2; temp -10 9 -4 -3; temperature -4 7 -2 -3; ten 0 0 -6 -4; ten> 1 2 -3 -6;
tender 8 -4 -5 -2; tender> 4 -3 -3 -2; tennis 2 0 0 -2; tent 10 -4 -6 -1; terrace 8 -5 -8 -5; terrible -2
1 -2 1; test 4 -1 0 -3; texting 3 -3 -2 -2; th 4 -2 -2 -1; th> 3 -1 -2 0; than -1 2 3 -2; thank 9 -12 -2
-5; thanks 5 -2 -2 -2; thanks> 7 -2 -3 -2; that -3 -3 -2 1; that> 3 -7 1 2; the -1 0 -1 1; the> 5 -5 -6
-3; theatre 2 1 -1 -2; them 5 -1 1 -6; them> 5 -2 0 -2; then -1 -4 0 0; then> 3 -9 -1 -12; there -1 -1 -2
1; there> -1 2 -4 1; these 3 2 -3 -7; these> 4 -3 -1 -2; they -2 1 -3 -2; thick -9 -4 8 -4; thigh -8 -5 3
-6; thigh> -2 5 1 -13; thighs 0 -2 -3 3; thighs> 4 -3 0 -2; thing -1 3 -6 -3; thing> 9 -5 -1 -8; things
-2 3 -2 0; think -5 -6 3 3; think> 2 -6 1 -7; thinking 2 -1 0 0; thinners 4 0 -3 0; third 4 -5 -4 -1;
thirds 6 -2 -1 -2; thirty 4 -2 -3 -6; this -2 -2 0 1; this> 3 2 -2 -3; those 5 -3 -2 -3; those> 3 0 0 -2;
though -1 -3 4 -3; though> 2 -2 -1 -1; thought -2 -4 -1 3; thread -1 -1 3 -1; three 4 2 -1 -5; three> 8
-4 -4 -1; threw 5 -6 -2 -2; throbbing -17 -5 18 -7; throbbing> -5 -2 6 0; throbs -13 -9 14 -6; through 4
-4 -2 -4; throwing 7 -5 -6 -12; thumb -6 8 -3 -9; thursday 5 -3 -1 -3; thursday> 4 0 -3 -3; ti 3 -2 -1
-1; tight 5 -7 -2 2; tight> 5 -2 -2 -3; tightness 5 -2 -1 -2; tiles -2 -10 -6 9; till -1 2 -1 -4; time 5
0 -3 -5; time> 1 2 -5 -3; times -4 2 0 -1; times> -2 4 -3 -2; timing 2 -1 0 0; tingle -12 12 -5 -8;
tingled -8 9 -7 -4; tingles -16 13 -11 -6; tingles> -8 6 -4 -4; tingling -23 19 -8 0; tingling> -7 8 -7
-6; tingly -14 15 -6 -7; tiny -3 -4 1 -2; tired -2 -4 -4 4; tired> 2 0 -3 -10; tissues 4 -2 -1 -2; to 2
-2 -1 -2; toast 4 -2 -7 -4; today 4 -5 -1 0; today> 6 -4 -3 -5; todays 0 -4 -2 0; toddler 1 0 -4 -4; toe
0 5 -5 -8; toe> -5 6 -3 -6; toes -12 16 -6 -11; toes> -3 4 -3 -6; together -2 6 -2 -5; toilet -4 -9 -6 4;
told 10 -8 -2 -2; tomatoes 3 3 3 -3; tomorrow 4 -1 -2 -1; tomorrow> 4 -3 -2 1; tongue -1 -16 -7 6;
tonight 2 -6 1 -4; tonight> 5 -1 -3 -1; tonite 4 -1 -1 -1; tonite> 4 -2 -1 -1; too 2 -2 -3 2; too> 4 -5 0
5; took 2 -4 2 -2; tooth 5 -5 -3 -2; total 2 -1 -1 -1; totally 3 -1 -2 0; touch 6 -12 1 -1; touch> -8 0 8
-1; touched 4 -2 0 -2; touching 8 -8 -3 -4; tough 7 -5 -2 -5; tough> 5 -1 -2 -4; tour 9 -5 -6 -3; tow -8
8 -6 -6; towel 6 -5 -2 -1; town 6 -5 0 0; track 6 -8 0 -10; traffic 4 -2 -1 -2; train 4 -2 -2 0; training
7 -5 -5 -5; trains 2 -2 -1 0; tram -4 3 3 0; travel 7 -1 -4 -3; travelling 7 -2 -1 -3; travelling> 5 -1
-2 -1; tree 2 3 -4 -3; tried 3 -3 -4 2; trip -1 5 -2 -3; trouble -7 -9 -4 9; trousers 0 2 -3 -3; truck 4
-2 -2 0; try 8 -6 -1 -2; trying -8 12 -2 -6; tuesday -1 1 -3 0; tuesday> -5 3 -5 4; tulips 3 -2 0 -1;
tummy 11 -5 -3 -8; turn -4 -8 4 0; turned 0 -4 0 -2; turning -6 6 0 0; tv 4 -2 -1 -1; twang -6 -5 6 -5;
twelve 5 -2 -1 -1; twenty 5 -1 -1 -2; twice -6 1 6 0; twice> 8 -9 -9 -5; twig -5 0 6 0; twins 6 -3 -1 -5;
twist -2 1 -4 -1; twisted -3 -8 3 -1; two 1 0 -4 0; two> 10 -6 -2 -4; type -1 2 -5 -3; typing 1 -4 -4 -1;
typo 1 0 0 0; tyre 9 -8 -4 -4; ugh 3 -1 -1 -1; ugh> 3 -2 -2 -1; um 4 -3 -1 -1; unannounced 3 0 -2 0;
unbearable -18 -7 16 -10; under -9 -2 11 -9; understand 3 -2 -3 -2; uni 4 0 0 -3; unreal 7 -4 -8 -3;
unsubscribe 4 -4 -5 -4; until 1 3 -3 -3; up -3 0 4 -1; up> 4 -1 -4 1; update 6 0 -1 -5; upper 6 -1 -1 -4;
upset 3 -2 -2 -3; upstairs 6 -4 -5 -5; urine -12 -5 -7 9; urine> -2 -2 -1 3; us 1 0 -1 0; used 8 -7 -4
-8; usual 3 1 -2 -3; v 3 -1 -1 0; van 5 0 -1 -4; version 10 -7 -4 -6; version> 6 -1 -2 -6; very -1 -2 -3
1; vet 10 0 -10 -2; video 4 -3 -2 -8; video> 4 -2 -1 -1; view 6 -5 0 -1; village 3 0 0 -2; violin 2 -2 -2
0; vision -5 -7 -6 7; vision> -8 -1 -2 8; visit 6 -2 0 -5; visit> 4 -3 -1 -4; visited 3 -2 -1 0; visiting
-2 -1 -1 3; visitors 13 -3 -2 -9; visitors> 1 0 -1 0; voice 5 -4 -4 -9; waist 9 -5 -2 -3; wait 5 -2 -2
-1; waited 0 -6 6 -1; waiting 3 -7 2 -7; wake -10 8 -8 4; wakes -20 22 -5 -7; waking -9 10 -7 -6; walk
-10 1 7 -6; walk> -11 5 3 -12; walked 0 0 2 -1; walking -8 6 2 3; wall -1 7 -7 -4; want 4 -4 -3 -2;
wanted 4 3 -1 -5; wants 6 -6 -2 0; ward 4 -3 3 -4; warm -5 -14 12 -5; warm> -4 0 5 0; was 2 -2 0 -3; was>
3 -2 -3 -3; washed -9 9 -1 0; washing 7 -3 2 -11; watch 6 -3 -5 -5; watched 1 -1 -1 -1; watching 3 -3 -1
0; water -4 -2 1 1; way -12 -5 10 -5; way> 1 -12 0 -2; we 5 -2 -1 -4; weak -25 14 -11 -3; weak> -14 -2 -7
5; weaker -10 11 -10 -7; weakness -24 12 -12 0; weakness> -15 4 -8 0; weather 5 2 -8 -8; wedding 8 -4 2
-13; wednesday 4 -2 -1 -2; wee -10 -4 -10 7; weeding 6 -2 -2 -3; week 1 3 -3 -8; week> 8 -5 -2 -2;
weekdays 3 -7 -3 -3; weekend -1 -2 -2 2; weekend> -1 0 2 -3; weeks 3 4 -3 -8; weeks> 4 -2 -1 -1; weight
-12 -1 12 -6; weight> -3 -5 3 -4; weird -5 5 -9 -5; weird> -3 -2 -3 3; well -3 3 -3 -4; well> 8 -9 1 -12;
went -6 1 -3 5; were 0 1 -1 -3; wet -6 -5 -5 8; what 2 3 -3 -12; whatever -12 10 -4 -5; when -4 0 -3 0;
whenever -5 4 -3 -2; where 5 -7 -1 2; which 7 -5 -5 -2; whichever -8 4 -3 -2; while -5 3 0 0; who 5 -2 -2
-2; whole -5 5 -4 3; why -1 2 -5 -5; wife -4 -10 -7 8; wifi 5 -5 0 -2; wild 1 0 0 0; will -1 1 1 -6; wind
0 2 -4 -1; window -1 -3 -2 5; windows 1 1 -2 -1; wine 5 -2 -2 -1; wipe -10 -12 -2 13; wire -2 3 -3 -3;
wise 8 -3 -1 -4; wish 2 -1 -1 -1; with 1 1 -2 -2; with> -2 2 -6 -8; without -9 8 -5 2; wk 4 -2 -2 0; woke
-9 10 -5 2; woke> 12 -3 -10 -9; woken -12 12 -4 -2; won 2 -1 2 -1; wonderful -3 2 -4 0; woohoo 4 -2 -1
-3; wool -7 2 -5 3; woozy -16 12 -5 -8; word 6 -2 -3 0; words -14 -3 -3 14; words> 5 -4 -4 0; wore 6 -4
-1 -2; work 5 -1 -2 -2; work> 5 -1 -1 -3; worked 2 -1 -1 -1; working 7 -4 0 -3; works 4 -2 -1 -1; works>
7 -6 -3 -3; worried 0 -3 -2 1; worry 1 2 -8 1; worse 2 1 -5 -8; worse> 5 -4 -2 -2; worst -6 -13 8 -8;
worth 9 -2 -8 -1; would 4 -3 -4 -2; wrist 2 -3 3 -5; wrist> 3 -1 0 -1; wrists 4 -1 -2 -1; write -2 -2 -3
3; writing 2 -1 1 -3; written 4 -4 -6 -4; wrong -6 -2 -2 8; wrote 4 -1 0 -2; x 4 -1 -1 -1; x> 6 -2 -2 -2;
xx 8 -2 -3 -6; yeah 5 -4 -4 -2; year 1 2 -7 -2; years 5 -5 -4 -7; yellow -1 -8 4 -3; yep 2 -4 -3 -2; yep>
7 -4 -5 -7; yes 6 -6 -2 -2; yes> 10 -9 -3 -3; yesterday -3 -3 1 -3; yesterday> 0 0 -5 -6; yet 7 -4 0 -2;
yet> 9 -1 -3 -5; yoga 9 -9 -1 -2; you 4 -3 -2 -2; you> 3 -1 -3 -1; young 5 -4 0 -3; your 5 -2 -1 -3;
yours 6 -5 -2 -2; yours> 5 -3 -3 -3; yup 7 -3 -2 -6; yup> 4 -2 -3 -1; zap -5 5 -5 -5; zero 7 -8 -2 -4;
zilch 4 -4 -4 -4; zoo -3 2 2 0; zoom 6 -2 -2 -1; → 7 -4 -1 -2; ⏰ 2 -1 -1 -1; ☀ 3 0 0 -2; ☀> 3 0 0 -2; ☑ 5
-4 -9 -5; ☕ 10 -7 -8 -8; ♀ 4 -3 -3 -3; ♀> 4 -3 -3 -3; ✅ 4 -3 -1 -2; ✅> 4 -3 -3 -3; ✌ -3 4 -6 -6; ✔ 5 -2
-1 -1; ✔> 5 -2 -2 -2; ❌ 5 -3 -3 -3; ❌> 6 -4 -4 -4; ❤ 4 -3 -3 -3; ❤> 4 -3 -3 -3; ➡ 4 -2 0 -1; 🌙 4 -1 -1
-2; 🌙> 4 -1 -1 -2; 🌞 8 -6 -6 -6; 🌧 8 -7 -7 -7; 🍮 3 -2 -1 0; 🎉 4 -1 -1 -1; 🎉> 5 -2 -1 -2; 🎻 3 -1 -2 -1; 🏃
2 -1 0 -1; 🏃> 2 -1 0 -1; 🏖 5 -1 -2 -3; 🏖> 2 -1 0 0; 🏼 3 -1 -1 -1; 🏼> 4 -1 -1 -2; 🏽 3 -1 -1 -1; 🏽> 4 -2 -2
-2; 👋 7 -2 -2 -3; 👋> 7 -2 -2 -3; 👌 4 -4 -3 -4; 👌> 4 -4 -3 -4; 👍 7 -3 -2 -2; 👍> 5 -2 -2 -2; 👎 6 -3 -3 -3;
👎> 6 -3 -3 -4; 💀 1 -6 -3 -1; 💀> 1 -4 -4 0; 💃 4 -1 -2 -2; 💃> 5 -2 -2 -2; 💪 5 -3 -2 -2; 💪> 6 -2 -2 -2; 💫 -3
1 -1 2; 💫> -3 1 -1 2; 💯 4 -4 -4 -4; 💯> 4 -4 -4 -4; 🔥 5 -4 -3 -4; 🔥> 3 -3 -3 -3; 😂 6 -3 -2 -1; 😂> 4 -2 -1
-2; 😄 4 -2 -2 -3; 😄> 4 -2 -2 -3; 😅 5 -2 -2 -2; 😅> 4 -2 -1 -1; 😊 5 -2 -1 -2; 😊> 6 -2 -2 -2; 😎 3 -3 -3 -3;
😎> 3 -3 -3 -3; 😐 -2 3 -2 -1; 😕 5 1 -2 -4; 😕> 4 2 -2 -4; 😖 6 -3 -2 -1; 😖> 7 -3 -2 -1; 😟 -7 4 -1 1; 😟> -2 4
0 -2; 😢 7 -5 -6 -3; 😢> 7 -5 -6 -3; 😣 6 -3 -3 0; 😣> 6 -3 -3 0; 😨 -3 0 0 3; 😨> -3 0 0 3; 😩 4 -2 -3 -1; 😩> 4
-2 -3 -1; 😫 4 -2 0 -1; 😫> 4 -2 0 -1; 😬 1 -1 -1 -2; 😬> 0 -1 -1 -2; 😭 1 -3 0 -1; 😭> 4 -4 0 -5; 😮 5 -4 -5
-6; 😰 -2 -2 2 2; 😰> -2 -2 2 2; 😱 -1 0 1 0; 😱> -1 0 1 0; 😳 -4 1 -1 2; 😳> -4 1 -1 2; 😴 4 -2 -2 -3; 😴> 4 -3
-3 -3; 😵 -2 -1 -3 3; 😵> -2 -2 -1 2; 🙂 3 -3 -3 -3; 🙂> 3 -3 -3 -3; 🙃 3 -1 -2 -1; 🙃> 3 -1 -2 -1; 🙄 2 -1 -1
-1; 🙈 4 -1 -1 -2; 🙈> 4 -1 -1 -2; 🙌 5 -2 -1 -1; 🙌> 5 -3 -2 -2; 🙏 5 -2 -1 -2; 🙏> 5 -2 -1 -2; 🤒 3 -1 -1 -1;
🤒> 3 -1 -1 -1; 🤔 6 -4 -4 -4; 🤔> 6 -4 -4 -4; 🤞 2 -1 -1 -1; 🤞> 2 -1 -1 -1; 🤣 6 -5 -3 -7; 🤦 2 -1 -1 0; 🤦> 4
-1 -2 -1; 🤧 3 -3 -3 -4; 🤷 6 -3 -3 -3; 🤷> 5 -3 -2 -3; 🥲 3 -1 -2 0; 🥲> 4 -2 -2 -1; 🥳 3 -1 -1 -1; 🥳> 3 -1 -1
-1; 🥴 3 -3 -4 -3; 🥵 3 -1 -1 -1; 🥵> 3 -1 -1 -1; 🧘 7 -6 -6 -6
"""
"""Each entry: a word of at least three replies ("<" first, ">" last, "#" a number, "_" every reply), and its weights in
the order of `suspicion.LEVELS`; 5 is one natural logarithm of the odds."""
