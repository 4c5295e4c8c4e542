"""Which words usually go with which warning sign. Written by `python -m tests.bench.doubting`, not by hand."""

WEIGHTS = """
! 6 -4 -3 -2; !> 4 -1 -2 -2; # 5 -1 -2 -3; #> 3 -1 -1 -3; % 6 -3 -2 -1; %> 4 -1 -2 -1; & 3 -4 1 -5; ( 3
-2 0 0; ) 5 -4 -1 -1; )> 3 -1 -1 -1; + 6 -4 -3 -2; , 1 -1 0 -1; ,> 8 -6 -4 -5; - 6 -4 -1 -1; -> 5 -3 -3
-1; . 3 -1 -1 -1; .> 5 -1 -2 -3; / 5 1 -3 -2; 20:00 4 -1 -1 -1; 3 -5 5 -3 -3; 5:30 3 -1 0 -2; 5:45 8 -7
-3 -3; 6 1 0 0 0; 6:15 5 -4 -2 -2; 6:30 4 -3 -3 -2; 6:30> 4 -3 -3 -5; 6:45 2 -1 -1 -1; 6> 3 -1 0 -2; 7:30
7 -3 -1 -3; 8:30 5 -3 -1 -2; : 6 -3 -2 -2; :> 4 -1 -1 -2; <! 6 -3 -2 -2; <# 1 -3 0 -7; <, 8 -3 -5 -4; <-
2 -1 0 0; <. 8 -5 -2 -5; <: 5 -2 -2 -2; <? 9 -4 -4 -1; <a 2 -8 -3 -1; <about 7 -4 -2 -3; <aching 10 -8 -1
-1; <achy 6 -6 -1 -1; <affirmative 7 -2 -3 -6; <after 0 -8 -10 2; <again 8 -7 -10 -5; <all 7 -5 -8 0;
<almost 6 -5 -3 1; <already 4 -9 -9 -1; <alright 4 -3 -4 -3; <am 6 -5 -5 -3; <an -1 2 -1 0; <and 8 -7 -3
-4; <ankle -6 -5 6 -3; <ants 0 6 -5 -4; <anymore 6 -5 -4 -4; <arm 1 2 -4 -12; <as 6 -5 0 0; <asdfgh 4 -4
-4 -4; <asdkjh 5 -5 -5 -5; <at 1 0 -5 -7; <aye 4 -4 -4 -4; <baby 4 -2 -1 -2; <back 4 -1 -1 -5; <bad 6 -2
0 -5; <bailed 6 -4 -3 -4; <baked 4 -2 0 -3; <bar 1 0 0 0; <became 3 -7 -9 -4; <because 3 -2 -5 -4; <been
12 -11 -2 -7; <before 6 -2 -4 -8; <bet 4 -3 -4 -3; <better 4 -2 -1 -1; <between 2 -5 -1 -1; <big -1 -4 1
-1; <bit 3 -2 -1 -4; <bits 8 -4 -7 -8; <black -12 -3 6 -4; <blacked -6 -4 -3 4; <bladder -4 -3 -3 5;
<blurred -5 -5 -2 6; <body 2 0 0 -2; <bonjour 2 -1 0 0; <boss 3 -2 -4 -1; <both -1 3 1 -6; <bought 3 -3
-4 -3; <breathtaking 3 -2 -2 -2; <bro 1 -3 -3 -1; <broke 5 -5 -6 -3; <bruh 5 -5 -4 -3; <bruise -4 -1 4
-1; <bruised -6 -6 6 -4; <burned 2 -2 0 0; <burning -14 7 -6 2; <bus 2 -1 -1 0; <busy 2 0 -2 -2; <but 7
-4 -8 -2; <buttock 4 -6 0 2; <by 5 -3 -2 -2; <calf -1 -6 3 -2; <calves 7 -4 -3 -5; <can -3 1 -1 -3;
<cancel 4 -4 -4 -4; <cba 3 0 -1 -1; <change 4 -2 -1 -1; <chest 0 -5 -3 2; <choir 1 -1 0 0; <cleaned 4 -2
-2 0; <coach -1 -4 0 -2; <complete 9 -6 -1 -1; <completed 6 -4 -2 -4; <completely 8 -6 -1 -2; <cooked 3
-1 0 -1; <could 2 4 0 -6; <covid 7 -4 -2 -5; <cut 3 0 -2 -3; <day 4 -2 -2 -1; <dead 11 -15 -2 -2; <dear 8
-4 -4 -1; <did 6 -4 -1 0; <dizzy -7 7 -1 -2; <do 2 -2 -1 -2; <doctor -2 -7 0 4; <does 3 2 -4 -3; <dog 9
-2 -11 -3; <doing 7 -4 -5 -3; <doms 4 -1 -3 -3; <done 3 -2 -3 0; <double 0 0 -4 0; <down 8 -6 -2 -5;
<dropped 2 -6 0 -6; <drove 0 2 -4 -3; <duck 2 -1 0 -2; <dull 6 -3 -2 -1; <dun 5 -4 -3 -3; <during 3 -5 -1
-10; <dying 2 -2 -1 0; <easy 6 -2 -3 -3; <effort 4 -3 -2 -1; <electric -4 5 -7 -2; <energy 1 0 0 0;
<evening 8 -2 -5 -3; <ever -4 -1 -7 2; <every 8 -7 -3 -3; <everything 0 -1 -5 -3; <exam 7 -4 -4 -1;
<except 6 -3 -2 -5; <exercise 4 -2 -2 -3; <exercises 5 -1 -4 -1; <ez 3 -2 -2 -2; <face -7 -3 -5 6;
<fainted -8 -3 -2 9; <feel 5 -8 -1 5; <feeling 1 0 -1 -6; <felt 3 -3 1 -7; <fever -7 -2 4 -6; <feverish
-8 8 -3 -4; <finally 6 -5 -1 0; <fine 7 -3 -2 -2; <fingers -12 13 -5 -4; <finish -1 -4 -3 0; <finished 3
-4 -3 -1; <finito 6 -4 -4 -4; <first 4 -5 0 -4; <flu 4 -2 -2 -3; <food 6 -2 0 -4; <foot 2 -1 -6 -6; <for
9 -3 -2 -3; <forgot 4 -2 -2 -1; <fr 5 -3 -2 -1; <from 6 -4 -3 -11; <gave 10 -2 -9 -2; <get 3 -2 -2 -5;
<going 10 -1 -3 -8; <gone 8 -7 -6 -8; <good 4 -1 -1 -1; <got 2 -4 -4 -6; <great 3 -1 -1 -1; <groin 1 -12
-5 1; <guests 4 0 -1 -3; <guten 3 -1 -1 -2; <had 3 -1 -2 -5; <haha 3 -3 -4 -3; <half 7 -8 -4 -2; <halfway
7 -7 -4 -2; <hamstring -2 -9 5 -4; <hamstrings 4 -3 -1 0; <hand -6 5 0 -3; <hardly -2 -8 5 -7; <has 4 -6
-2 -6; <have 2 -4 -3 -5; <having -1 -3 -6 5; <head -1 1 -6 -1; <health 3 0 -1 -2; <heard -3 -1 3 0;
<heart -3 -7 -3 5; <heavy 2 -2 -1 -2; <hecho 1 0 0 0; <held 4 -3 0 -1; <hello 0 -1 -4 -1; <here 5 -1 -3
-1; <hey 5 -1 -2 -4; <hi 5 -2 -6 -1; <hip 3 -2 -2 -5; <hips 5 -4 -2 -1; <hiya 7 -3 -3 -3; <honestly 1 0 0
0; <hope -3 -1 -2 3; <hot 10 -14 2 -2; <how 12 -5 -5 -2; <hurts 3 -2 -7 -4; <i 2 -2 -1 -1; <ich 4 -1 -1
-1; <idk 4 -4 -4 -4; <ill 5 -2 -2 -2; <in 8 0 -8 -14; <inbox 4 -4 -3 -2; <is -4 -2 2 -7; <it 4 -3 -5 -5;
<ja 4 -3 -1 -1; <jaw -14 -7 -9 13; <just 1 1 1 -5; <k 3 -3 -3 -3; <kid 5 -3 -1 -2; <kids 1 -1 0 0; <kinda
8 -1 -3 -3; <kindly 7 -3 -2 -3; <knee 5 -5 -2 -6; <knees 10 -9 -2 -3; <l 3 1 -4 -2; <last 2 -1 -8 -2;
<late 3 -2 -1 0; <later 8 -4 -3 -2; <left 2 -9 -3 0; <leg 2 -2 -1 -7; <legs 0 5 -3 -14; <less 3 -2 -1 0;
<light -9 5 -3 -3; <lighter 7 -3 -7 -1; <like -9 4 -2 -2; <little 4 -1 -3 -3; <load 4 0 -3 -1; <lol 7 -6
-4 -2; <long 2 -2 -3 0; <lost 0 -2 -4 -1; <lovely 1 1 1 -6; <lowkey 2 -1 0 -1; <lunch 3 -3 -1 -1; <made 5
-1 -1 -2; <managed 7 -2 -1 -6; <many 2 -1 0 -1; <market 2 -2 -1 -1; <mat 8 -1 -4 -3; <maybe 0 -1 -1 -13;
<me 9 -9 -9 -5; <meeting 5 -4 -2 -1; <might 3 -2 -2 -2; <migraine 5 -1 -2 -3; <missed 3 -1 -1 -1; <more 6
-2 -2 -2; <morning 4 -6 0 -3; <most 5 -2 -2 -2; <mostly 3 -1 -1 -1; <move 5 -5 -4 -1; <mum 7 -5 -4 -4;
<muscle 2 0 -1 0; <must 8 -3 -6 -8; <my 1 -4 -4 3; <nah 4 -4 -3 -3; <nearly 4 -5 -6 -2; <neck 5 -3 -1 -2;
<neighbour 10 -4 -4 -4; <new -3 -1 -2 1; <next 3 -2 0 -3; <ngl 5 -1 -1 -2; <nice 0 0 1 -2; <night -10 12
-3 -4; <no 3 -3 -1 -6; <none 9 -8 -1 -2; <nope 6 -5 -2 -6; <not 12 -8 -3 -6; <nothing 7 -1 -1 -5; <notice
-3 5 -3 -4; <noticed -2 4 -1 -7; <now 5 -4 -7 -5; <numb -8 0 -8 5; <numbness -9 6 -8 -1; <of 9 -6 -10 -3;
<off 14 0 -5 -11; <ok 8 -6 -2 -3; <okay 5 -4 -2 -2; <omg 5 -5 1 1; <on 6 -9 -4 2; <one -3 -8 2 0; <only
11 -5 -6 -4; <or 2 -2 -2 1; <ouch 5 -3 -3 -3; <oui 3 -3 -3 -2; <our 5 -3 -1 0; <out 5 -5 -4 -4; <outer -2
9 -5 -2; <overslept 6 -2 -2 -1; <pain 4 -1 -4 -1; <palpitations -5 -8 -2 8; <parents -2 -3 3 -3; <part 8
-2 -5 -3; <partly 8 -3 -3 -3; <passed -6 -3 -5 5; <pause 7 -3 -2 -2; <phone 3 -3 0 -2; <physio 3 -3 -2
-5; <pins 1 1 -4 -2; <played 1 -5 0 -4; <please 5 -2 -1 -1; <pop -3 -1 3 -2; <popped -7 -7 8 -3; <pose 3
-2 -1 0; <power 10 -2 -1 -8; <pressure -1 -6 -2 5; <pretty 3 -1 -1 -2; <probably 3 -3 -3 -3; <pulled 0 -6
2 -11; <put 4 -5 -4 -3; <quick 3 0 -3 0; <quiet 8 -5 -2 -2; <quit 3 -2 -2 -2; <qx 4 -8 -4 -3; <r 4 -5 -1
-1; <ran 7 -5 -1 -1; <reached 8 -7 -1 0; <ready 3 -2 -2 -2; <really -3 -10 -9 6; <rehearsal 3 -2 0 0;
<rest 2 -1 -1 -1; <right -4 -4 -1 1; <room -7 8 -10 -9; <routine 1 -2 0 1; <said 7 -4 -2 -1; <same 7 -4
-1 -1; <sat 3 4 -5 -6; <saw 3 -8 -9 1; <school 4 -3 -1 0; <send 6 0 0 -5; <session 7 -4 -1 -3; <set 7 -6
-3 -3; <severe -6 -4 4 0; <sharp 5 -9 8 -3; <shooting -4 6 -4 -8; <shorter 6 -3 -3 -2; <shot 7 -3 -2 -2;
<should 10 1 -6 -8; <shoulder -4 -2 6 -4; <show 5 -3 -3 0; <si 5 -5 -3 -2; <sick 3 -2 -1 -1; <since -1 0
-4 0; <sir 5 -6 1 -2; <skipped 5 -3 -2 -3; <slept 16 -15 0 0; <slight 5 -4 -6 -5; <slipped -2 0 2 -3;
<slurred -4 -3 -2 8; <so 2 -5 -3 -1; <some 7 -17 4 -3; <something -2 -9 2 -1; <sore 11 -7 -3 -2;
<soreness 3 -4 3 -3; <sorry 6 -1 -1 -4; <sorted 3 -3 -3 -3; <speech 2 -1 -2 -1; <spent -1 -1 2 -2;
<squeezing -2 -2 -4 3; <started 10 -6 -1 -4; <stiff 4 -1 -1 -1; <stiffness 1 0 -1 -1; <still 8 -6 -3 -12;
<stomach 3 -2 -3 -2; <stop 15 -9 -5 -3; <stopped 6 -7 -2 -2; <stretch 4 -3 -2 0; <stretched 4 -3 0 -1;
<stretches 4 -4 -1 -1; <stuck 1 0 0 -1; <sudden -4 -9 -5 8; <suddenly -1 -5 -2 4; <sunny -2 4 -1 0;
<swamped 2 -1 -1 0; <swollen -4 -1 6 -1; <take 3 -2 -4 -1; <tax 1 0 -1 0; <teacher 8 -1 -4 -6; <ten 10 -8
-3 -6; <tender 5 -4 -3 -1; <thank 3 0 -1 -3; <thanks 7 -3 -2 -2; <that 8 -2 -1 -5; <the 3 -4 -2 -3;
<there -1 0 0 -5; <thigh -7 -9 14 -3; <thing 8 -8 -5 -3; <think 6 -1 -2 -4; <this 5 0 -5 -7; <thought 6
-1 -3 -4; <thread 2 -1 -1 0; <three 4 -1 -1 -1; <threw 8 -6 -6 -3; <throbbing -5 -4 4 -2; <tight 1 -2 -2
2; <tightness 2 -1 -1 0; <tingling -8 1 -4 2; <tingly -3 8 -4 -2; <to 0 1 -1 -3; <toast 5 -5 0 -1; <today
10 -7 -2 -5; <toes -5 5 -2 -3; <tomorrow 8 -2 -2 -4; <tonight 5 -3 -4 -3; <too 3 -4 2 -7; <took 6 -2 -3
-2; <traffic 5 -2 -2 0; <train 3 -2 0 0; <travelling 4 -1 -1 -2; <tried 8 -1 -6 0; <twice 8 -3 -4 -4;
<two 5 -3 -1 -3; <unbearable -9 -6 8 -5; <unsubscribe 4 -4 -5 -4; <up 0 2 -5 -3; <very 5 -3 -1 -2; <wakes
-3 3 -5 -2; <walked 4 -3 -2 -2; <want 3 -3 -1 1; <was 4 -9 -1 -2; <watched 2 -6 -1 -1; <way 11 -9 -9 -7;
<we 0 -1 1 -1; <weak -2 7 -4 -7; <weakness -10 6 -5 -5; <week 3 -1 -1 0; <weight 0 2 -12 -5; <well 7 -6
-3 -4; <went 2 4 0 -14; <wet -12 -3 -3 5; <what -1 -4 1 -4; <when 1 -1 -2 -6; <where 7 0 0 -6; <which 5
-8 -5 -2; <while 6 -4 -5 -6; <who 7 -4 -5 -3; <whole 3 -4 -4 0; <why 10 -8 -6 -4; <wife 4 0 0 -3; <wifi 3
-3 -1 -2; <will 7 -2 -4 -1; <with 0 -4 -1 -4; <woke 1 2 -14 -8; <words -3 0 -1 3; <work 4 -1 -2 -1;
<worked 1 0 -1 0; <worse 9 -9 -5 -2; <xx 3 -1 -2 0; <yeah 6 -5 -4 -3; <yep 2 -5 -3 -2; <yes 4 -2 -2 -2;
<yesterday 4 -4 0 -2; <you 4 -3 -2 1; <yup 7 -3 -2 -7; <zero 1 0 -1 0; <zilch 5 -4 -5 -4; <✅ 6 -4 -4 -3;
<✔ 6 -4 -4 -3; <❌ 6 -3 -3 -3; <🎉 7 -2 -2 -2; <👌 3 -3 -3 -3; <👍 7 -3 -3 -2; <👎 5 -3 -3 -3; <💀 4 -4 -3 -3;
<💪 5 -4 -4 -3; <🔥 3 -3 -3 -3; <😂 5 -3 -3 -3; <😎 3 -3 -3 -3; <😴 3 -3 -3 -3; <🤒 5 -1 -2 -3; <🤷 6 -4 -5 -4;
= 4 -2 -1 -1; ? 3 -1 -1 -7; ?> 2 0 -1 -6; _ 12 -5 -4 -4; a -3 0 -1 -2; a> -9 6 -8 2; ability 9 -2 -4 -4;
able 1 -8 -2 4; about 3 -2 -3 0; about> -1 -3 -3 3; abs 2 -2 -1 -1; accident -7 -7 -6 7; ache 4 -1 -7 -5;
ache> 7 -4 -3 -1; aches 10 -3 -8 -2; aches> 1 0 -5 -2; achey 10 -10 -9 -8; achilles 2 -2 0 0; aching 8 -4
-7 -5; aching> 7 -6 -2 -1; achy 12 -3 -3 -6; achy> 6 -2 -4 0; across 7 -3 -4 -1; action 1 0 -1 0;
actually 9 -6 0 -2; adn 5 -1 -3 -2; advanced 6 -1 -2 -3; af 3 1 -5 -2; af> 2 -1 0 0; affirmative 7 -2 -3
-6; afraid 6 -1 -2 -2; after -4 -1 0 0; after> 1 -3 -3 -1; afternoon -1 -3 -3 0; afternoon> 0 -6 -5 2;
afterwards -9 1 5 1; again -3 5 -4 -5; again> 4 -7 -5 -1; age -1 -12 -7 2; age> 7 -3 -1 -4; ages 5 -5 -2
-4; ago 1 -5 -4 4; ahce 5 -4 -3 -1; air -12 -5 -2 12; airport 6 -5 -2 -9; alarm 8 -2 -1 -6; all -1 0 -1
-1; all> 7 -5 -1 -7; allotment 4 -1 -2 -1; almost 0 -6 -4 2; along -8 8 -2 -3; already 1 2 -6 -4;
already> -5 5 -3 -8; alright 4 -3 -4 -3; also -2 -3 -1 3; also> -3 3 -5 -3; although 10 -6 -1 -6; always
1 2 -2 -2; always> 2 4 -1 -7; am -3 -1 -4 2; am> 0 1 -4 -7; amazing 6 -4 -5 -2; an -4 1 -1 0; and -5 2 0
2; and> 5 -5 -3 -13; ang 3 1 -1 -4; ankle -9 -2 8 -10; ankle> 6 -5 -6 -4; ankles -7 -7 8 -3; another 5 -2
-2 -3; answer -2 -4 6 0; ants -6 9 -5 -7; any 0 -3 2 -5; any> 12 -5 -6 -8; anymore 1 2 -2 -2; anymore> 6
-4 -3 -4; anything 1 -7 -7 5; anyway 1 -1 0 -4; anyway> 2 -1 -5 -3; anywhere 5 -2 -1 -2; apart 7 -6 -1
-6; app 5 -1 -1 -3; apples 1 -1 0 0; appointment 7 -7 -3 -5; appointment> 3 0 -1 -1; are 2 -1 -2 -5; are>
-3 0 -1 1; area 3 -7 -2 6; arm -10 5 -2 0; arm> -4 -1 3 -4; arms 3 -1 -2 -2; arms> 3 -2 -1 -1; around 0
-9 -1 8; arrived 1 -3 0 -2; arthritis 6 -6 -5 -3; as -5 8 -5 -6; asdfgh 4 -4 -4 -4; asdkjh 5 -5 -5 -5;
ask 7 0 -1 -6; asked 3 -3 -1 -3; asking 3 -5 0 -2; asleep -6 6 -7 -2; asleep> -6 8 -6 -10; at -1 1 -4 0;
at> 1 0 0 -1; ate 8 -2 -3 -4; attic 0 1 -3 -4; aunt 1 0 0 0; autocorrect 2 -1 0 -2; awake -8 8 -2 -2;
away -8 -3 4 -2; away> -2 5 -4 -7; awful -9 9 -2 -2; aye 4 0 -6 -7; baby 8 -8 -6 -1; back -3 3 -2 -6;
back> -3 -2 3 -6; backs 9 -4 -3 -3; bad -6 -2 -16 3; bad> -1 -8 -3 2; badly -5 2 0 2; bags 0 0 -1 1;
bailed 5 -3 -2 -4; baked 1 1 0 -2; bakery -2 2 0 -1; baking 1 1 0 -3; balance 7 -4 -6 -3; balcony 4 -3 -1
-3; ball -5 -3 5 -5; balloon -1 -6 5 -6; balloon> -5 -2 6 -5; balloons 6 -3 -3 0; banana 3 0 -3 0; band 4
-2 -4 -2; bank 2 0 -2 -3; bar 8 -3 -2 -7; barbecue 3 0 -2 0; barely -3 0 0 3; bath 3 -3 -2 -4; bathroom
-7 -5 -3 7; battery 6 -1 -2 -4; be 1 0 5 -4; beach 3 -3 -2 -5; beans 2 -2 1 -2; bear -7 -7 7 -6; beat 3
-6 -5 0; beating -12 -1 3 11; beats -10 -2 -2 9; beats> -5 -3 -1 5; beautiful 8 0 -5 -4; became -6 -1 -1
7; became> -1 4 -4 -5; because 4 -1 -3 -4; become -3 5 -1 -2; bed -2 0 -2 0; bed> 0 -4 -3 4; bedroom 3 0
-2 -2; been -3 1 -5 -3; been> -2 0 -5 4; before -3 -4 -3 4; before> -2 -12 -9 9; beforehand -2 0 2 0;
began 4 -5 -3 -1; begin 4 -3 -1 -1; beginning 5 -1 -2 -2; behind -8 -12 2 5; being 4 -2 -4 -4; believe 1
0 -3 -6; belly 7 -1 0 -5; below -3 -14 0 3; bend -5 7 -5 -12; bend> 5 -4 -2 -6; bendier 12 -3 -1 -9;
bending -5 7 -4 -7; bending> -5 7 -4 -8; bends 3 -4 -3 -3; bent 1 -1 -3 0; best 2 -1 0 0; bet 4 -3 -4 -3;
better 5 1 -7 -4; better> 9 -9 -3 -5; between 5 -18 -1 16; beyond 4 -1 -3 -1; bicycle 2 2 -1 -4; big -4 2
5 -10; bigger -9 -2 9 -2; bike -1 -3 -1 3; bill 4 -2 0 -6; bin 1 1 -1 -2; bins 3 -2 -1 -1; birds 5 0 -3
-2; birthday -2 2 -6 -3; biryani 1 0 0 0; biscuit -7 7 -6 4; bit 1 -1 -8 0; bit> 1 -1 -2 0; bits 6 -10 -3
4; black -8 -11 5 3; blacked -14 -5 -3 12; bladder -9 -12 -3 12; blanket 3 0 -2 -1; bless 2 0 0 -1; block
-3 4 -4 -6; blood 3 -3 -6 -3; blown -6 -5 8 -2; blue -7 -8 4 -1; blue> -9 -7 1 1; blurred -11 -4 -3 12;
blurry -7 -5 -4 6; board 4 -3 -1 -1; boat 0 -2 3 -8; body 10 -16 -2 8; body> -9 -8 -3 8; boiled 9 -6 -3
-5; boiler 2 -1 0 0; boiling 5 -4 -3 -3; bone -1 0 -6 0; bonjour 2 -1 0 0; book 3 -1 -1 -1; boots 3 -3 -4
-4; bored 10 -5 -8 -4; boredom 3 -1 -1 -1; boring 2 0 0 -1; boss 6 -3 -1 -3; boss> 4 -3 0 -1; bot 4 -1 -2
0; both -2 -1 -1 -2; bothered 9 -4 -9 -4; bottom -8 -5 -7 5; bought 3 -3 -2 -3; bowel -4 -3 -5 4; bowels
0 -5 -2 1; bowling -4 -1 4 -2; box 8 -7 0 -1; boxes 2 -2 2 -3; boy 5 -5 -4 -5; boys 3 -1 0 -2; brain 3 0
-1 -2; bread 7 -5 -2 -1; break 7 -3 -2 -3; breakfast 3 -2 -4 -2; breakfast> 3 -3 -3 0; breast -3 -6 -6
10; breastbone -9 -8 -9 10; breath -12 -6 -11 11; breath> -6 -4 -4 4; breathe -13 -11 -10 16; breathe> -7
-2 -4 7; breathing 10 -2 -6 -9; breathless -13 -4 -6 12; breathlessness -9 -7 -11 11; breathtaking 5 -5
-1 -6; bridge 5 -2 -4 -10; bridge> 6 -5 -2 -4; bright 4 0 -4 0; bring 1 0 0 0; bro 3 -4 -4 -3; bro> 4 -5
-4 -4; broke 4 -3 -3 -4; broken 11 -10 -11 -8; brother -5 -10 -7 5; brought -1 -2 1 -1; bruh 5 -5 -3 -3;
bruise -18 -14 21 -6; bruise> -5 -1 7 -2; bruised -13 -5 13 -8; brutal 1 0 0 0; btw 2 -1 -1 0; buckets -1
0 0 1; buckled -11 -1 12 0; buckles -11 -11 12 -12; buckling -12 -6 12 -3; bug 3 -2 -2 -1; bug> 1 0 -1 0;
building 7 -6 -1 -2; bum -11 8 -8 4; burned 4 -2 -1 -4; burning -12 13 -5 -5; burst 8 0 -1 -7; bus -1 -4
4 -5; bus> 7 0 -5 -1; busy 4 -1 -1 0; busy> 6 -1 -2 -2; but 0 2 -2 -2; but> 8 -5 -6 -9; butt 6 -3 -1 -1;
buttock -7 -4 -12 7; buttocks -2 -5 0 6; button 11 -1 -1 -11; buzzing -16 9 -6 -5; by 3 0 -1 -2; cab 3 -6
-1 -6; cake 0 2 -2 -4; calf -10 0 9 -9; calf> 0 3 -1 -6; call 3 -3 -1 0; call> 3 -1 -2 -2; called 10 -3
-6 -1; calling -2 -2 -4 6; calls 7 -4 -2 -5; calm 3 -3 -1 -4; calmed 6 -3 -2 -3; calories 6 -5 -5 -5;
calves 4 -3 -1 -1; calves> -4 5 -4 -7; came -5 -2 -4 2; came> 8 -1 -6 -6; camp 2 -1 -1 0; can -4 -4 -1 5;
canada 1 0 0 0; cancel 4 -4 -4 -4; cancel> 4 -1 -1 -3; cancelled 6 -4 0 -2; candle 8 -6 -2 -2;
candlelight 7 -1 0 -7; capitals 2 -1 -1 -1; car 1 -6 2 -1; cards -3 -2 3 0; carpet -1 -1 -3 1; carried 0
-2 6 -3; carry -6 -11 10 -8; carrying 1 -1 2 0; cat 8 -5 -4 -4; cat> 3 -2 -2 -3; catch 1 -2 -4 3; cats 1
0 0 0; caught 2 -3 -4 0; cause -4 -3 -4 6; cba 5 -1 -1 -2; ceiling 4 -3 -2 -1; ceiling> 4 -4 -2 -2;
celebrated -3 -2 -1 3; centre -2 6 -6 -6; certain 6 -4 0 -10; chair 2 0 -4 -3; chance 5 -1 -2 -2; chance>
4 -2 -2 -2; change 5 -2 -2 -1; changed 7 -1 -2 -3; changed> 7 -2 -3 -3; chaos 1 0 -1 -1; chat 12 -1 -1
-11; checked -4 5 -5 -8; chest -18 -12 -7 23; chest> -5 -4 -1 9; child 5 -1 -5 -12; children 9 -8 0 -10;
chips 3 -1 0 -2; choir 1 -1 -3 2; choir> 10 -3 -2 -6; christmas -1 -2 1 -3; church 3 -1 -2 -1; cinema -5
5 0 0; circles -9 3 6 -11; class 6 -1 -3 -1; class> 3 0 0 -2; clean 3 -3 0 -1; cleaned -2 3 -1 0; cleared
4 -2 -2 -5; client 1 0 0 -1; clients 5 -4 -1 0; climb -5 0 1 -1; climbed 0 1 -2 -3; climbing -3 -2 -4 5;
clock 5 -1 -1 -4; closed 4 0 0 -3; club 0 -1 -2 2; cm 5 -3 0 -1; coach 5 -3 -1 -2; coach> 5 -2 -1 -2;
coast 4 -2 -3 -2; cobra 9 -4 -3 -4; coffee 5 -5 -2 -3; coffee> 6 -2 -1 -2; coffees 3 -2 -1 -1; cold 4 -5
-2 1; cold> 1 -2 -2 0; colleague 2 -1 -1 0; colleagues 1 0 0 -1; colour -5 -8 6 -9; come 2 -9 -3 6; comes
-10 -2 1 3; comfortable 4 -4 -4 -3; comfortable> 4 -4 -4 -3; coming -4 4 -2 1; commute 4 -1 -1 -2;
company 2 -1 0 -1; complained 5 -1 -3 -1; complete 5 -3 0 -5; complete> 2 2 -4 -5; completed 2 3 -3 -5;
completed> 7 -6 -4 -3; completely 5 -2 -2 -1; completely> 3 -2 -4 -2; concert 1 4 -3 -10; conductor 3 0
-1 -2; conference 7 -1 -2 -5; consciousness -14 -5 -2 13; constant -9 9 -6 -5; constant> 9 -7 -3 -4;
constantly -3 3 -3 -3; control -17 -7 -6 16; cook 1 0 -1 -1; cooked 3 -1 0 -1; cooking 3 -3 -3 -3; cool 3
-3 -2 -3; cool> 3 -3 -2 -3; cork 0 0 2 -2; corner -1 -1 -2 2; correction 4 -2 -1 -3; cottage 3 -3 -1 -2;
cotton 2 -2 -5 0; couch 8 -3 -2 -5; cough 13 -8 -5 -4; cough> 4 -3 -1 0; could 0 -7 0 4; could> 5 0 -1
-4; count 9 -4 -3 -6; count> 13 -4 -4 -6; counting 10 -5 -8 -3; country 1 0 0 0; couple -2 2 0 0;
courbatures 4 -3 0 0; course 4 -1 1 -4; cousin 2 0 1 -2; cousins 8 -7 -1 -7; covid 7 -3 -1 -5; cow -4 3
-1 -4; crack -19 -13 22 -2; cramp 6 -4 -8 -10; crashed 4 -6 1 -4; crawling -6 9 -3 -5; crazy 4 -7 -2 -2;
crazy> -4 -6 1 -3; cream 4 -1 -2 -1; cricket -2 -1 2 -1; cried 0 2 -6 -2; crime 4 0 -3 -2; crochet 5 -4
-3 -1; crossword -2 2 -2 -1; crushed 3 -2 -1 -1; crushing 4 -6 -8 0; cry 1 0 0 0; cup -3 -6 -2 5; cup> 0
-2 0 2; cuppa 6 -3 -2 -2; cups -5 6 -4 -4; current -9 5 -4 -4; curry 5 0 -2 -4; curtain 0 -4 -3 8;
curtains 5 0 -1 -4; cut 9 -8 -1 -1; cut> 2 -2 0 0; cycled 2 0 0 -2; dad 12 -5 -4 -11; daily 2 0 0 -2;
dance 2 -2 1 -3; danced -1 -3 4 -1; dancing 8 -4 -1 -7; dark -3 -1 -2 3; dark> 3 -3 0 -5; daughter 2 -5
-3 1; dawn 9 -8 -4 -4; day 1 -6 2 -4; day> 7 0 -6 -14; days -3 1 -4 -1; days> 6 -3 -3 0; de 2 -1 -5 -5;
dead -4 8 -11 -8; dead> 3 1 -4 -11; deadline 11 -2 -2 -8; deadlines 12 -10 0 -4; dear 6 -2 -6 0; dear> 6
-2 0 -5; deep 7 -2 0 -7; degrees -3 -1 4 -5; delayed 1 0 0 0; dentist -1 -2 -3 0; denver 4 -4 -2 -2; desk
4 -1 -1 -2; despite -3 3 -5 -1; details 1 0 0 -1; di 7 -6 -2 -3; diagnosed 10 -6 -6 -6; diagnosed> 5 -3
-3 -5; diagnosis 5 0 -4 -1; did 4 -3 -2 -1; did> 9 -3 -2 -4; died 4 -2 0 -2; diet 1 0 -5 -8; different 5
-1 -1 -4; difficult 7 -1 -1 -4; difficult> 4 -1 -1 -2; digging 5 -2 -1 -2; dinner 2 -2 -2 1; dinner> 7 -4
-4 -2; discomfort 1 -7 -2 0; dizzy -29 27 -6 -7; dizzy> -6 5 -4 -4; do 3 -6 -4 -2; do> 4 -6 -3 -3; doctor
7 -3 -8 -9; does -7 1 -4 1; does> 3 0 -10 -2; dog -2 -4 -3 5; dogs 1 -1 -1 0; doing -2 -3 -2 -1; doing> 9
-9 -5 -13; doms 9 -4 -7 -2; doms> 4 -2 -1 -3; done 5 -2 -3 -2; done> 7 -3 -4 -6; door 5 -9 -5 -2;
doorbell 11 -8 -3 -3; double -13 -9 1 11; double> -3 -1 -3 3; down -4 2 -3 -2; down> 3 -8 1 -2; downs -6
7 -1 0; downward 0 0 -1 -2; drank 0 0 0 -2; dress 0 3 -1 -2; drill 2 -3 -1 2; drilling 4 -2 -1 -1; drive
2 -2 0 -5; driving -2 -1 4 -2; drooped -8 -2 -3 6; drooping -16 -2 -4 8; drooping> -7 -3 -3 4; droopy -8
-1 -1 10; drop -7 7 -2 -3; dropped 2 -4 1 -2; dropping -4 5 -3 -6; drove 5 0 -2 -5; drum 2 -7 2 -5; drunk
-1 -2 -1 2; dry -3 0 3 0; duck 3 -3 -1 -3; ducking 7 -2 -5 -4; due 8 -4 -1 -5; dug 7 -4 -7 -4; dull 9 -5
-4 -1; dun 5 -4 -3 -3; during -10 6 -2 0; dusted 3 -3 -2 -3; dusted> 3 -3 -3 -3; dying 3 -1 0 -1; e 9 -9
-7 -4; each 3 -1 -2 -2; earlier 0 0 -1 -1; early 5 -3 -4 -1; early> 5 -2 -2 -3; ears 5 -2 -2 0; ease -8 9
-2 -6; ease> -3 3 -2 -4; eases -2 3 -1 0; easier 7 -1 -6 -1; easter 10 2 -2 -3; easy 4 -1 -2 -2; easy> 3
-1 -1 -1; eaten 3 -3 -2 -1; eating 10 -6 -4 -3; effort 4 -2 -1 -1; eggs 2 0 1 -1; eggs> 4 0 -1 -3; ego 4
-1 -1 -3; eight 1 -3 -6 2; either 9 -5 -3 -1; either> 6 -1 -1 -4; elastic 6 -5 0 -2; elbow -1 -2 1 -7;
elbow> 3 -3 -2 -2; electric -16 10 -4 -8; electricity -7 5 -3 -5; elephant 0 0 -2 3; eleven 9 -5 -2 -4;
else 3 2 -5 -3; else> 2 -1 -3 -3; elsewhere 8 -7 -1 0; elsewhere> 3 -2 -1 -1; emails 5 -3 -2 0;
embarrassing -6 -3 -2 6; emergency 3 -2 -2 -1; empty 1 0 0 0; end 0 -5 -4 1; end> 1 0 -4 -7; ended 5 -2 0
-2; endless 1 -1 -1 0; energy 9 -11 -7 -5; energy> 5 -1 -2 -2; english 7 -3 -6 0; enough 6 -4 -7 -7;
entirely 4 -3 0 0; episodes 4 -4 -3 -3; erg 2 -1 0 -1; euros -2 -1 3 -2; even -1 -6 -8 7; evening -2 -4 1
-1; evening> 8 -4 -5 -5; evenings 3 -3 -2 -1; ever -10 6 8 -5; every -6 7 -4 -3; everybody -3 2 0 0;
everyone 0 1 -5 -1; everything -2 0 -3 0; everything> 6 -10 1 -3; everywhere 3 -1 -1 -1; everywhere> 3 -1
-1 -1; exactly 2 -2 0 -1; exam 4 -3 -2 -6; exam> 2 0 -1 0; exams 7 -5 -5 -5; except 8 -5 -3 -5; excited 2
0 -1 -1; excitement 3 -2 -1 -1; excuse 5 -5 -1 0; exercise -1 0 -1 -2; exercise> -4 0 -2 -5; exercises 5
-4 -4 -4; exercises> -3 2 -5 -2; exhausted 3 -2 -2 -2; extra 4 -4 -1 0; eye -8 -2 -1 12; eye> 0 -1 -2 3;
eyes 4 -1 -2 -4; eyes> -4 -1 -2 4; ez 4 -3 -3 -4; face -2 -16 -5 9; faint -14 -8 -9 16; fainted -23 -8 -6
25; fainted> -7 -3 -5 7; fair 5 -3 -3 -3; fait 6 -4 -1 -3; fall -2 -6 4 -9; fallen -7 -8 -4 7; falling -3
3 -2 -7; fam 8 -2 -7 -2; family 13 -8 -4 -7; fan 0 2 -3 -1; far 6 -5 -1 -3; farm 5 -5 -5 -8; fasting 3 0
-1 -1; fat -1 -4 12 -1; father -11 -12 -5 11; fave 5 -5 -5 -4; favourite 6 -4 -5 -3; fed 3 -2 -1 -4; feel
-6 3 -3 -3; feeling -5 4 -8 0; feeling> 7 -9 -2 0; feels -3 6 -9 -1; feet -7 9 -4 -7; feet> -4 4 -3 -3;
fell 0 0 -4 0; felt -8 1 6 -2; felt> 7 -8 -9 1; fence 7 -2 -3 -3; fever -15 15 -3 -13; feverish -8 7 -3
-5; few -10 -2 -3 4; film 5 -3 -3 -4; final 5 -1 -2 -2; finally 4 -4 2 -2; find 5 -2 -2 -1; fine 3 -3 -5
-5; fine> 1 -1 -5 -2; finger -2 9 -7 -10; fingers -9 12 -3 -10; fingers> 1 -1 -4 -5; fingertips 0 2 -1
-6; fini 6 -5 -3 -3; finish 5 -3 -3 -3; finish> 1 3 -9 -3; finished 3 -1 -4 -2; finished> 4 -3 -3 -5;
finishing 3 -3 -2 -3; finito 6 -4 -4 -4; fire 6 -4 -1 -3; first 4 -2 2 -5; fish 1 -1 -6 0; fish> -10 -3
-1 11; fishing 5 2 -8 -1; fit 3 -4 -1 -2; five 5 -4 -2 -5; five> 8 -2 -3 -2; fixed 4 -1 -3 -1; flat 3 -6
3 -3; flexible 4 -1 -1 -1; flexor 6 -6 -4 -5; flight -4 -1 0 0; flooded 8 -4 -1 -2; floor 0 -1 -6 -1;
floor> -4 -1 -5 4; floors 2 -2 -1 -1; flow 3 0 -2 -6; flu 9 -4 -2 -5; flu> 4 -3 -2 -1; flue 7 -7 -7 -6;
fluttering -8 -4 -4 7; flying -1 3 -4 -2; fold -6 8 -3 0; fold> -1 -6 0 4; folds -9 2 9 -1; food 5 -1 0
-3; foot -15 12 4 -9; foot> 3 -2 -1 -5; football 0 -3 1 -2; football> 1 -3 4 -2; footy 2 -3 5 -3; for -2
3 -5 0; force -9 0 -10 6; forearm 6 2 -1 -2; forearms 4 -1 -1 -2; forever -9 -3 3 -3; forget 2 -1 -1 -1;
forget> 6 -2 -2 -2; forgot 10 -2 -2 -7; forgot> 8 -1 -2 -6; forgotten 3 -1 -1 -1; form 7 -1 -1 -6; forty
5 -1 -2 -4; forward -3 5 -2 0; forward> 5 -5 -1 0; found -3 -4 -7 4; four 4 -4 -2 -3; four> 9 -3 -3 -4;
fourth 5 -1 -5 -1; fr 6 -2 -1 -2; free 8 -6 0 -5; free> 6 -1 -2 -4; freezing -2 3 -1 -1; fresh 4 3 -3 -6;
friday -5 3 -2 -9; friday> 6 -3 -2 -5; fridge -3 3 -1 -1; friend 4 -7 -2 2; friends 6 -3 -4 -1; frog 6 -8
0 -4; from 0 0 -2 -1; from> 7 -1 -5 -2; front 4 -6 -3 -2; frost 1 -2 -1 -6; froze 5 -5 -2 -2; full 1 -8
-2 0; full> 4 -2 -5 -3; fully 3 -6 -5 -2; fully> 0 -4 -4 1; fun 2 -2 1 -1; function 2 0 -2 -1; funeral 11
-3 -3 -10; funny -6 -2 -9 4; further 9 -7 -2 -6; game 4 -10 0 -8; gaming 2 -1 0 0; garage 5 -3 0 -2;
garden -2 -5 0 3; gardening 3 -5 2 -3; gardening> 3 -2 -2 -1; gas 5 -1 0 -3; gasping -7 -5 -4 7; gate 0
-3 0 0; gave -6 -6 10 -9; get -2 7 -7 -3; get> 9 -9 -5 -8; getting -6 2 2 -4; girl 5 0 -3 0; girls 5 -4 0
0; give 6 -3 -4 -3; gives -18 -7 13 -5; giving -6 -3 9 -3; glad 1 0 0 -1; glass 4 -1 -2 0; glasses 3 1 -2
-6; glute -4 3 -2 -8; glute> -3 5 -7 -1; glutes 10 -1 0 -9; gn 6 -3 -3 -3; go -6 0 2 2; go> -1 2 -3 -4;
god 3 -1 -1 -1; god> 7 -3 -2 -2; goes -7 0 2 2; goes> 1 -4 -3 -1; going -3 -1 -10 4; going> -3 5 -2 -3;
gone -4 4 -6 -3; gone> 2 1 -4 -4; good 7 1 -4 -5; good> 7 -5 -1 -2; goodness 2 0 -1 0; gorgeous 8 -3 -3
-7; got -4 4 -2 -3; grandchildren 7 -3 -3 -2; granddaughter 0 4 -1 -3; grandkids 2 -2 0 -3; grandson 2 -5
-1 -6; grapefruit -3 0 3 0; grass -7 2 8 0; great 8 -3 -8 -3; great> 10 -5 -3 -3; green 1 0 -1 0; grey 0
-1 0 1; grip -13 10 -4 -8; grippe 11 -3 -1 -8; groin 1 -19 3 12; groin> -8 -9 3 -2; ground 9 -2 -4 -6;
group 1 0 -1 0; gtg 9 -7 -1 -2; guess 3 -3 -3 -3; guess> 6 -2 -3 -4; guest 12 -7 -4 -10; guests 7 -2 -1
-4; guests> 5 -1 -1 -2; guitar 2 -1 0 -1; guten 3 -1 -1 -2; guy 4 -4 -7 -4; gym 9 -5 -5 -7; gymnast 4 0
-2 -2; ha 4 -1 -1 -1; had 0 -2 -6 4; had> 6 -5 -6 -6; haha 5 -3 -3 -3; haha> 4 -2 -1 -1; hair 4 0 0 -3;
half 0 -3 -2 2; half> 4 -2 -3 -6; halfway 1 -2 0 -2; halfway> 3 -16 -1 -7; hall 0 4 0 -5; hallway -1 -1 3
-2; hamburg 5 -4 -4 -5; hamstring -5 -3 6 -7; hamstring> -3 -1 3 -1; hamstrings 7 -4 -2 -1; hand -8 10 -4
-8; hand> -8 7 -4 -6; hands -10 10 -3 -9; hanging -9 -6 -4 13; hanging> -6 0 -4 7; hangover 6 -1 -2 -2;
hangs -7 0 4 6; happen 3 -1 -1 -2; happen> 9 -1 -4 -5; happened -4 -2 -4 -1; happy 8 -5 0 -3; happy> 4 -1
-1 -2; hard 7 -3 -7 0; hard> 5 0 -2 -2; hardly -7 -10 5 1; hart 2 -3 -3 -1; harvest 2 0 0 -1; has -5 0 0
-1; hate 3 -3 -1 -4; have -4 3 -1 -2; have> 9 -1 -7 -1; having 1 -3 -4 0; he 3 -3 -3 -2; head -9 10 -8
-6; head> -1 -2 -3 3; headache 5 -6 -6 -4; headed -11 8 -3 -4; health 7 -1 -2 -4; hear -4 -4 5 -5; heard
-7 -5 8 -6; heart -4 -11 -9 11; heartbeat -9 -10 -2 7; heat 3 -1 -2 -1; heating 8 -6 -2 -1; heavy -2 -7
-3 6; heavy> 1 -3 -3 2; hecho 2 -2 -1 0; hedge 1 -1 0 0; heel -4 1 4 -5; heel> -12 3 2 -3; heels 2 -1 -1
-2; held 7 -2 0 -5; hell 5 -5 0 0; hello 2 -2 -4 -1; hello> 4 -4 -3 -4; help 4 -4 -7 0; help> 1 -7 -7 0;
helped 6 -1 -2 -2; helps -7 8 -1 0; helps> -3 3 0 0; hens 2 -2 0 0; her 9 -7 -4 -4; her> 11 -9 -5 -8;
here 1 -2 -2 -2; here> 6 -12 -4 -4; hey 7 -2 -1 -4; hi 5 -2 -6 -2; hi> 6 -6 -1 -4; hike 4 -2 0 -1; hike>
3 0 -1 -2; hill 4 -4 -2 -1; him 7 -4 -2 -1; himself 2 0 0 -2; hinge 5 -10 -4 0; hip -2 3 -1 -7; hip> -2 0
-1 -5; hips 0 3 -2 -3; hips> 6 -1 -1 -4; his 2 -9 3 -10; hit 0 -5 -2 3; hiya 7 -3 -3 -3; hold -5 -1 -3 4;
holding 5 -2 -9 2; holds 2 -1 0 0; hole -3 -4 5 -3; holiday 4 -7 0 -1; holiday> 3 -2 -1 0; holidays 3 -1
-1 -1; home 3 -2 -3 -1; home> 6 -2 -4 -3; homework 7 -1 -3 -5; honest 8 -1 -5 -2; honestly 5 -4 -2 -3;
hooray 8 -8 -4 -4; hope 2 -1 -2 1; hopping -10 -6 7 -6; horrible 1 -1 0 0; horse 5 -5 -2 -2; hospital -1
-11 -6 6; hot -4 -2 2 -10; hot> 0 -5 2 -3; hotel 8 -4 -3 -2; hotel> 2 0 0 -1; hour 3 -3 0 -2; hour> -6 4
-1 3; hours 2 2 0 -3; hours> 3 0 -2 -1; house 6 -4 -4 -3; house> 0 1 -3 -3; how 1 -2 -5 0; however 3 3 -3
-4; hr 2 -1 0 0; hrs 6 -5 -2 -2; huge 5 -4 -1 -1; hundred 6 -4 -4 -11; hungry 4 -1 -2 -2; hurt 6 -4 -2
-2; hurt> 0 -14 3 -5; hurting 4 0 -5 -6; hurting> 1 -1 -3 -5; hurts 1 2 -2 -2; hurts> 2 -1 -8 1; husband
0 -9 -6 7; i 1 -2 -1 1; i> 6 -7 -8 -8; ice -2 -1 4 -1; ich 4 -1 -1 -1; id 3 -2 0 -1; idea -6 6 2 0; idk 1
-1 -5 -4; if -7 -3 5 -5; ill 8 -1 -3 -3; ill> 6 -5 -4 -2; impossible 7 -4 -2 -2; in 0 0 -1 0; in> 4 -3 -1
-2; inbox 3 -3 -2 -2; indoors 4 -3 -2 -5; infection 11 -6 0 -10; inner -2 -5 -2 5; inshallah 4 -1 -2 -1;
inshallah> 4 -1 -2 -1; inside 2 -7 -1 -1; instead 7 -5 -1 -3; instead> 3 -2 -2 -1; internet 9 -5 -2 -5;
interview 2 -2 0 -1; into -2 1 -9 1; ironing 0 -1 4 -4; irregular -11 -8 -5 12; irregularly -9 -2 -2 8;
is -2 -2 1 1; is> 3 0 -10 -7; it 1 -1 0 -3; it> -1 -3 4 -1; itself 0 -1 -4 1; itself> -10 5 -8 3; ja 4 -3
-1 -1; jab 4 0 0 -4; jam -2 2 -2 -2; jar -3 3 -2 -4; jars 6 -1 -2 -1; jaw -8 -7 -4 7; jaw> -3 -2 -2 6;
jelly 6 -6 2 -6; jetty 1 -4 -3 0; jk 6 -2 -2 -2; job 7 -2 -1 -3; join 2 0 0 -1; joined 6 -3 -2 -1; joint
-13 7 7 -6; joke 3 0 0 -3; joy 8 -1 0 -7; jumbled -3 0 0 3; jump 6 -5 4 -6; jumped 7 -3 0 -7; jumper 7 -6
-1 -1; jumping -5 0 0 5; june 7 -7 -2 -3; just 1 -5 -3 0; k 5 -1 -3 -6; k> 3 -3 -3 -3; keep -6 3 -1 0;
keeps -11 4 3 0; kept 1 1 -7 -8; kettle 8 -2 -3 -8; keys 0 2 0 -2; kg 7 -1 -10 -3; kick 3 -2 0 -1; kicked
0 -7 3 -4; kid 14 -12 -5 -6; kids 6 -3 -3 -5; kids> 8 -6 -4 -3; kill 5 -4 -2 0; killer 3 -2 -1 -1;
killing 8 -5 -9 -10; kilo -7 7 -7 -4; kilometres 5 -2 -2 -2; kilos -4 5 -2 -4; kind 3 -4 -3 -3; kinda 1
-3 -3 0; kindly 6 -2 -2 -2; kitchen -8 -1 -2 6; kitchen> 4 -3 2 -3; km 8 -6 -2 -4; knackered 10 -1 -4 -9;
knee -1 -6 7 -7; knee> 1 1 -4 -5; kneeling 0 -7 1 -2; knees 4 -10 1 -3; knees> 6 -3 -2 -4; knitting 2 -1
0 -1; know -3 -3 0 -2; know> -3 -1 -2 3; knows 1 0 0 0; knows> 1 0 0 0; krakow 2 0 -1 -1; l 3 0 -2 -2;
ladder -3 -1 2 -5; ladies 5 -4 0 0; lads 4 -4 -3 -6; lake -1 -2 2 -1; landing 1 -1 2 -2; laptop 6 -3 -3
-2; lasagne 1 -1 0 0; last 2 -5 0 -2; last> 6 0 -2 -4; lasted -3 5 -2 3; late 6 -4 0 -6; late> 4 -3 -1 0;
later 6 -2 -2 -3; later> 6 -2 -2 -1; latter 3 -1 -1 -1; laugh 7 -3 -2 -3; laughed 5 -6 0 -3; laughing 5
-1 -1 -3; laughing> 2 -3 -4 -1; law 9 0 -1 -8; lawn 1 -3 -2 2; laws 2 -1 0 -1; lay 0 3 -4 -3; lazy 5 2 -4
-3; league 3 -1 -2 0; learning 1 0 0 -1; least -1 -2 -2 -1; leave 4 2 -3 -3; leaves -3 0 3 0; leeds 8 -5
-2 -2; left 0 -1 0 -2; left> 3 0 -4 -3; leg -11 7 2 -7; leg> -11 1 0 -4; leggings 8 -1 -2 -5; legs -3 -2
-5 1; legs> -9 2 -4 2; lengths 3 -2 -1 -4; less 4 2 -4 -11; less> 1 -1 0 0; let 6 -1 -2 -3; level 8 -2 -3
-4; licence 1 0 -1 0; licking -4 -1 0 4; lie -1 4 -3 -6; lie> 4 -3 -5 -1; life 1 -1 -4 0; lift 1 0 -6 0;
lifting 3 -6 -1 -7; light -7 6 -3 -3; light> 5 -3 -2 -5; lighter 10 -3 -8 -3; lighter> 8 -1 -4 -5;
lightheaded -15 14 -5 -5; lightning -11 10 -4 -8; lights -8 -6 5 4; like -1 1 -1 -2; like> 3 -3 1 -1;
liked 3 -2 -2 0; lil 3 3 -10 -8; line 5 -2 -2 -3; lisbon 2 -1 -1 -1; list 2 -4 -2 -5; list> 6 -4 -7 -3;
listen 2 0 0 -2; listening 3 -1 -1 -1; literally -6 0 0 6; little 7 0 -5 -5; little> 8 -4 -5 -2; live 0 3
-3 -3; living 8 -6 -1 -2; load 1 -11 8 -10; loading 4 0 -2 -2; loads -5 10 -2 -2; loaves 3 -1 0 -3; lol 1
-2 -2 -2; lol> 6 1 -2 -11; long 4 0 -4 -6; longer 9 -2 -4 -9; loo -1 -4 3 2; look -3 0 -8 2; looked 8 0
-3 -6; looking 6 -5 0 0; looks 1 -4 2 -7; loose 8 -5 -3 -13; lose -1 3 -4 -5; loser 5 -6 -2 -2; losing
-10 3 -4 3; loss -7 13 -12 -9; lost -9 2 -5 6; lost> 8 -7 -5 -6; lot 1 -1 -4 -6; lot> 3 1 -8 -5; lots 2 0
-2 0; loud -6 -2 5 -5; love 6 -2 -9 -5; loved 4 1 -2 -2; lovely 4 -4 0 -7; lovely> 4 -2 -3 -2; low -2 -1
-1 2; lower 3 -4 1 -5; lowkey 2 -1 0 0; luck 3 -2 -1 0; lunch 3 -1 -5 -2; lunch> 2 -4 0 -3; lunchtime 5
-1 -2 -2; lunge 2 -5 0 -3; lunge> -2 -2 3 -3; lunges 3 -5 -2 -1; lunges> 5 -4 -2 -4; lvl 6 -5 -1 -3;
lying -8 -1 -5 7; lyon 1 -1 0 0; m 2 -1 0 0; ma 2 -6 1 -6; machine 5 0 -5 0; mad -7 -2 0 1; mad> -1 3 -4
-3; madam 5 -4 -6 -3; made 1 -5 2 -3; make 1 -2 -2 -3; makes -3 -2 -10 1; making -2 -2 -1 3; man 10 -8 -2
-5; man> 3 -3 0 0; manage 11 -6 -7 -3; managed 6 -5 -1 -3; many 7 -3 -5 -2; march 0 1 0 0; margaret 8 -8
-3 -1; mark 3 -4 0 -2; market 4 -2 -2 0; marking -2 2 0 0; mat 4 -6 -4 -1; mat> 4 -6 -7 1; match 1 -2 2
-2; mate 7 -2 -3 -2; mate> 8 -4 -3 -4; mates 1 -4 -3 1; maths 6 -5 -3 -2; matter 3 -3 -3 0; max 5 -4 -5
-5; may 7 -11 0 -3; maybe -7 -2 -2 4; maybe> 8 -5 -10 -10; me -3 1 -1 -4; me> 0 -3 -2 -2; mean 4 -3 -5 1;
mean> 3 -2 -1 -3; means 4 -1 -3 0; meant 6 -6 -3 -1; medicine 3 -2 -4 -4; meeting 6 -4 -1 -3; meeting> 4
-1 -2 -2; meetings 6 -3 -1 -2; meetings> 6 -1 -1 -3; melon -5 -1 7 -5; memory 5 -5 -2 -8; men 3 0 -2 0;
mention -2 4 -7 -4; mess 3 0 0 -2; message 5 -1 -1 -3; messages 3 -2 -2 -2; messages> 4 -2 -1 -1; met 1 0
0 -1; mid 4 -4 -3 -2; middle -4 4 -5 -1; midnight 3 -5 1 -3; might 2 -3 1 -3; migraine 12 -6 -3 -4;
migraine> 2 0 -1 0; miles 2 0 -4 -4; milk 6 -5 -1 -7; min 1 -5 -1 -1; min> -4 0 -3 0; mind 0 -3 -3 -3;
mine -2 -10 -6 5; mins 3 -5 -1 1; minus 3 -3 -2 -4; minute -1 -6 -4 2; minute> -1 -6 -7 6; minutes 1 -1
-1 2; minutes> -1 -5 -3 2; miss 7 -1 -7 -2; miss> 7 -1 -7 -2; missed 9 -2 -3 -5; missing -7 -5 0 7; mom 3
-1 -1 -1; moment -8 5 -6 6; mon 3 4 -1 -5; monday 4 -3 -3 -3; monday> 3 -3 -3 -1; month -3 4 -1 -3;
months -4 4 -1 -4; mood 5 -2 -1 -1; mood> 5 -3 -4 -3; moon 3 -1 0 -1; more -2 1 -3 0; more> -2 0 -2 3;
morgen 2 0 -1 0; mornign 6 -2 -2 -3; mornign> 8 -3 -3 -4; morning 1 -3 -1 -1; morning> -1 0 -2 -2;
mornings 1 0 0 0; most 6 -1 -2 -2; most> 7 -2 -2 -3; mostly 5 0 -1 -3; mother -4 -8 -7 9; motivation 8 -3
-4 -5; motivation> 4 -3 -4 -2; mountain 5 -5 0 -3; mouth -9 -10 -4 13; move 4 7 -8 -6; moved -3 4 -1 -2;
moves 4 -5 -2 -4; moving 5 -1 -1 -3; mowed 0 -2 -3 2; msg -4 -4 -2 4; msgs 6 -3 -1 -2; much 0 -4 2 -4;
much> 2 -3 0 -3; mug 1 -2 0 2; mum 1 -4 -5 0; murder 3 0 -3 0; murdered 5 -2 -2 0; muscle 3 -7 3 -6;
muscles 5 -4 -2 -2; music 0 4 -1 -4; must -7 -4 -4 7; my -4 0 1 1; myself -8 -12 -7 12; myself> -7 -1 -1
8; na 2 -1 0 0; nah 4 -4 -3 -3; nah> 4 -4 -4 -3; name 5 -6 -3 1; names 8 -7 -3 -4; nan 1 -1 0 0; nap 4 -1
-1 -4; napped 1 -1 0 0; nasty 3 0 -1 -2; near 5 -1 -3 -1; nearly -2 -6 -2 1; neck 4 1 -4 -3; neck> -4 0 1
-2; need -4 -5 -3 5; needed 6 -5 -1 -3; needle 3 -1 -2 -2; needles -10 10 -4 -4; needs 3 -4 -3 -3;
neighbour -10 -2 -3 9; neighbours 4 -3 0 -3; nephew 5 -3 -1 -1; nervous 1 3 0 -2; netflix 3 -1 -1 -1;
never 5 -4 -4 -6; new -1 -7 -2 3; new> -3 -4 -5 3; news 5 -3 -4 -1; next 0 -8 -7 5; ngl 3 -2 -2 1; ngl> 6
-3 -2 -3; nice 3 0 -1 -8; nice> 3 -3 -5 -2; nicely 2 -3 1 0; niece -5 0 0 5; niggle 7 -3 -4 -1; night -11
10 -6 -1; night> 5 -6 0 -3; nights -7 10 -6 -10; nine 3 -2 0 -1; nite 1 -1 1 -1; no -2 0 3 -4; no> 11 -3
-6 -3; nobody -4 -6 5 -3; noise -3 1 3 -1; none 7 -2 -4 -1; none> 6 -1 -1 -4; noon 4 -5 -1 3; noon> 10 -9
-1 -6; nope 6 -4 -2 -5; nope> 4 -1 -2 -1; normal 6 0 -9 -7; nose 10 -3 -3 -6; not -5 -1 2 3; note 4 -2 -2
-2; nothing 0 -4 -6 2; nothing> 2 -10 -6 3; notice -7 -1 -4 2; noticed -3 1 1 1; noticing -4 -4 -3 4; now
-3 -1 2 0; now> 2 -1 -3 -7; nowhere -10 -5 -7 13; numb -20 13 -10 4; numb> -9 4 -5 2; number 6 -4 -3 -1;
numbness -19 13 -11 -2; nursery 4 -1 -3 -1; o 3 -2 -1 -1; obviously 4 -4 -4 -1; oclock 4 -6 -4 1; oclock>
3 0 -1 -2; odd 5 -5 -10 3; of 0 0 -2 -1; of> 4 -4 -6 -3; off 1 -8 1 -4; off> 4 -2 -5 -4; office 4 -3 -2
-4; office> 4 -1 -2 -5; oh 6 0 0 -4; ok 0 -2 -9 -3; ok> 1 -1 -3 -5; okay 3 2 -2 -7; old 6 2 -1 -4; omg 5
-5 1 0; omg> 3 -1 -1 -1; on -3 -4 2 -1; on> 0 2 -4 -6; once -2 -6 -5 6; once> 7 -1 -1 -6; one -3 -4 -2 1;
one> 6 1 -6 -11; ones 4 -5 -3 -7; ones> 3 -3 -3 -5; only 2 -1 -1 -3; only> 4 -2 -1 -4; oops 6 -2 -1 -5;
open 5 -1 -3 -7; opened 12 -8 -6 -11; opener 8 -4 -4 -8; operation 5 -10 6 -14; or 12 -3 -2 -14; or> 3 -2
-2 -2; osteoporosis 5 -4 -1 -2; other -4 -10 8 -6; other> -2 -3 3 -2; others 4 -1 -2 -1; others> 3 -1 -3
-2; otherwise 4 -1 -1 -4; ouch 5 -3 -2 -3; ouch> 6 -4 -4 -4; oui 3 -3 -3 -2; our 6 -5 -1 0; out -2 -7 0
4; out> 3 -6 -7 -1; outer -1 9 -3 -8; outside 4 -1 -5 -6; oven 3 -1 -2 0; over -6 -1 -4 4; over> -6 9 -13
-14; overnight -10 -7 10 -7; overslept 6 -3 -2 -2; overslept> 5 -5 -2 -2; overtime 7 -5 -2 -1; ow 8 -6 -7
-4; own 5 -2 -2 -2; packed 2 0 -2 -6; paid 4 -3 0 -1; pain 0 2 -3 0; pain> -3 -3 1 -1; painful 3 -5 -1
-6; painful> 4 -3 -4 -5; paining 2 -3 -8 -2; paining> -4 5 -8 -12; pains -11 3 -12 4; paint 3 -1 0 -1;
painted 3 -2 -2 -1; palpitations -17 -13 -7 19; palpitations> -9 -6 -3 9; pancakes 4 -1 0 -3; paper -13
-11 -11 15; papers 0 -1 -1 0; parcel 6 -5 -1 -1; parents 3 -3 3 -4; park 4 -2 -2 -7; parked -9 -3 -4 7;
part 5 0 -2 -2; part> 4 -2 -1 -1; partly 8 -3 -3 -3; party 6 -3 -1 -2; pass -5 -12 -7 10; passed -15 -6
-6 14; past 2 0 0 -1; pasta 3 -1 -1 0; patch -1 -2 2 -7; patients 7 -3 -7 -6; pause 5 -3 -1 -2; pause> 9
-2 -2 -4; peace 6 -4 -5 -6; pee -12 -14 -7 18; pee> -5 -4 -5 6; people -1 1 -1 -2; percent 5 -5 -1 -2;
percent> 7 -1 -1 -5; perhaps 6 -2 -4 -3; period 5 -5 -2 -2; period> 3 -3 -2 -1; phone 5 0 -10 -2; photo 4
-3 -1 0; photos -3 0 3 0; physio 3 -3 -3 -4; piano 11 -6 -1 -5; pick 9 0 -1 -8; picked -1 0 1 0; picture
4 -6 -3 -2; pictures 6 -4 -3 0; pieces 3 0 0 -3; pigeon 8 -1 -2 -6; pillow -2 5 -3 -5; pinky -4 7 -3 -12;
pins -8 9 -4 -4; pit -7 0 7 0; pitch -1 2 0 -2; pizza 4 -3 -2 -4; place -7 -5 -5 10; plan 7 -6 -3 -4;
plan> 1 0 0 -1; plane 5 -1 -3 -2; plank 6 -4 -2 -4; plank> 3 -2 -5 -3; planks 5 -4 2 -4; planks> 4 -6 4
-6; planned 9 -7 -5 -1; planted 5 -6 -2 -3; plants 3 -4 -3 -2; plate 0 -2 0 -1; platform 2 0 -1 -1; play
3 -3 -2 -2; played 1 -5 -1 -4; playing 1 0 -7 -2; playlist 3 0 -1 -2; pleasant 3 -2 -1 -1; please 5 -2 -1
-2; please> 5 -2 -3 -2; pleased 3 -3 -3 -6; plumber 6 -4 0 -2; plums 7 -5 -1 0; plus -10 10 -3 -2; pm 4
-2 -1 -1; pm> 5 -3 -4 -2; point 8 -5 -4 -2; poisoning 5 -2 0 -4; pool 5 -4 -1 -5; poor 5 -4 -5 0; poorly
9 -7 -4 -5; pop -21 -11 22 -3; pop> -3 -1 3 -4; popcorn 4 0 -4 -3; popped -21 -10 23 -5; popped> -4 -1 6
-1; porch 6 -3 -7 -6; porridge 8 -4 -1 -3; porridge> 6 0 -2 -3; pose 2 1 -4 -5; pose> 8 -6 -2 -2;
position -4 6 -1 -8; possible -2 -5 4 -3; postman 4 -2 -1 -4; pot 1 0 0 0; potatoes 5 -1 0 -3; pounds 2 1
0 -5; power -3 10 -12 -11; practice 5 -9 6 -5; prefer 3 -2 0 -1; pregnant 7 -2 -4 -3; pregnant> 6 -4 -5
-4; press 4 -1 -1 -2; pressed -3 -2 -3 5; pressing -3 -11 -8 12; pressure -14 -3 -3 12; pressure> -3 -2 1
2; pretty 4 -1 -2 -1; prickling -12 13 -9 -6; prob 3 -10 -6 1; probably 3 -3 -3 -2; problem 2 -6 -6 -1;
problem> 5 -10 -9 -2; problems 5 -3 -6 -5; program 10 -4 -3 -5; programme 6 -2 -1 -4; programme> 4 -2 -2
-3; promise 8 -6 -4 -4; promise> 2 0 -1 -1; proper -9 5 -1 -3; properly -7 2 -6 2; properly> -6 3 -6 -1;
proud 4 0 -1 -2; pub 2 -1 0 -1; puffed -3 -4 6 -2; puffy -5 -5 5 -4; pull 14 -9 -6 -8; pulled 1 -10 -1
-5; puppy 6 -6 -3 -1; purple -8 -10 10 -5; push -7 3 -3 3; pushing 2 -1 -1 -1; put 1 -13 6 -9; putting 1
0 0 -1; quads 6 -3 -2 0; quarter 6 -1 -3 -4; quarters 3 -1 -2 0; question 7 -8 -6 -6; queue 4 -5 -3 0;
quick 3 0 -2 -1; quiet -1 4 -2 -2; quit 5 -9 -6 -2; quit> -5 -3 -4 5; quite 3 0 -4 1; quiz 1 -1 0 -1; qx
2 -1 -2 -4; qx> -4 1 -2 -2; r 4 -2 -2 -1; race 3 -4 -4 -1; racing -11 -5 -2 11; radiates -8 10 -9 -1;
radio 9 -6 -7 -3; rain 12 -11 -5 -9; rained 4 -1 -2 -1; raining 9 -10 -1 -2; rainy -1 3 -2 0; ramadan 4
-2 -1 -1; ran 3 2 -2 -2; rang 6 0 -1 -4; rang> 3 -2 -1 -1; rate 0 0 -4 -2; rather 3 -1 -3 -1; rd 2 -5 0
-1; reach 2 0 -2 -1; reached 1 -3 2 -2; read 5 -2 -1 -2; reading 4 -3 -3 -6; ready 3 -2 -2 -2; real 5 -1
-2 -3; really -2 0 -1 -2; reason -10 10 -9 -4; receive 1 0 -1 0; reckon 2 -1 0 -1; red -6 -4 7 -1;
regatta 0 -2 0 2; regular -9 -1 -1 10; rehearsal 2 -1 -1 -4; remember 8 -9 -6 -9; remember> 4 -2 -3 -6;
reminder 3 -2 -1 -1; reminders 3 -1 -2 -1; rep 0 -4 3 -2; report 11 -6 -8 -7; report> 9 -1 -10 -5;
reports 1 0 0 0; reps 5 -5 -3 -2; rest 9 -11 -2 -3; rest> 4 -3 -2 -1; results 3 -3 -3 -4; return 0 1 0 0;
reunion 6 -2 -1 -4; rhythm -5 0 0 6; ribs -5 -5 5 0; rice 4 -4 -3 -3; ride 3 -1 -1 -4; right 1 1 0 -4;
right> 4 -3 -1 -7; ring -7 2 4 -7; ringing 0 0 1 0; river 3 -3 -3 -5; road 7 -4 -1 -5; rode 2 -1 0 -1;
roll -4 5 -7 -15; rolled 0 0 1 -2; rolls 8 -8 -5 0; romantic 1 -1 0 0; roof 2 0 -4 -6; room 0 2 -2 -4;
room> -2 -1 4 -2; roommate 6 -2 -2 -3; roses -2 2 0 -5; rough 8 -7 0 -1; roughly 5 -1 -3 0; round -1 -2
-3 1; round> 0 -9 -1 1; rounds 3 -5 1 0; rounds> 5 -5 -5 -5; routine 10 -7 -1 -3; row -1 -2 -2 -2; rowing
9 -8 -6 -3; rt 8 -7 -2 -1; rubber -6 -3 8 0; rug 4 -3 -3 0; rugby 4 -4 0 0; run 3 -1 -2 -1; run> 5 -1 -1
-3; running -3 5 -8 -5; runs -13 13 -6 -6; s 3 -3 1 -1; sad 5 -11 -2 -3; saddle -5 -7 -3 8; said 4 -2 -1
-2; salon 5 -4 -1 0; same 5 -3 -4 -5; same> 4 -4 -5 -3; sang 2 -1 -4 -5; sat -5 0 -3 4; saturday 4 -3 0
0; saw 0 -4 -9 2; say 0 0 -3 1; say> 3 -1 -1 -2; says 0 -3 -4 2; scale 10 -3 -5 -2; scale> 8 -2 -6 -1;
scared 7 -4 0 -2; schedule 6 -5 -2 -1; school -1 3 1 -2; school> 9 -7 -6 -8; scones -3 -1 3 -4; scored -1
0 1 -1; scratch 6 -3 -1 -1; screaming 5 -4 -4 0; screen -5 -6 -7 5; sea -1 -2 6 -3; seaside 2 -2 0 0;
season 0 1 -1 0; seat -1 5 -8 -1; seated -5 3 2 -5; sec -5 5 -6 -3; second 1 -3 -9 3; second> 3 -4 -4 1;
seconds -5 -3 -1 6; seconds> 0 -3 -2 2; secs -6 -3 -2 6; see -6 -5 -6 10; seeing -9 -10 -5 9; send 4 -1
-1 -1; sending 5 -2 -2 -1; sent 3 -2 -1 -1; sentence -5 -2 -3 6; series 3 -4 -3 -3; session 2 -2 -1 -2;
session> 5 -4 -6 -3; sessions 3 -1 -1 -1; set 1 1 -6 -7; set> -3 3 -7 -4; sets 7 -2 -2 -1; sets> 3 0 -2
-1; settle -6 6 -4 -2; settled 5 -5 -6 -4; seven 4 -2 -1 -3; seven> 6 -2 -3 -3; severe -22 -7 18 5;
sewing 3 -15 -3 -2; shake 10 -8 -3 0; shame 1 -1 2 -1; sharp 7 -8 8 -2; sharp> 5 -1 -3 -1; she 3 -4 0 -6;
shedding 5 0 -3 -2; shift 7 -3 -3 -7; shift> 3 -6 -7 0; shifts 1 -1 0 0; shin -8 -2 7 -8; shin> -3 -1 4
0; shins 8 -1 -4 -2; shivering -13 13 -7 -10; shock -6 -1 3 -5; shoe -2 -3 6 -1; shoes 5 -3 -10 -3;
shooting -19 11 0 -4; shoots -8 8 -8 -6; shop 9 -2 -2 -6; shopping -2 0 4 -1; shops 5 -3 -4 -8; short -8
-4 -4 8; short> 8 -1 -4 -10; shorter 6 -2 -2 -2; shorter> 6 -3 -2 -4; shortness -7 -3 -3 3; shot 2 -1 -2
-2; should -7 -2 6 -4; shoulder -1 -3 5 -6; shoulder> 4 -6 -3 -3; shoulders 7 -5 -1 -1; shovelled 1 0 0
0; show 4 -4 -2 -4; showed 5 -5 -2 -2; shower -2 -3 -4 4; shut 7 -2 -3 -3; si 5 -5 -3 -2; sick 9 -3 -1
-5; sick> 6 -1 -3 -1; side -4 -8 -4 5; side> -2 1 -3 -8; sides 6 -5 -1 -2; sides> 3 -3 -2 0; sight -11 -7
-5 9; sign 3 -2 0 -1; signed 8 -3 -4 -7; simply 1 0 0 0; since -8 -1 -4 3; since> 1 -5 -7 1; sing 1 0 0
0; singing 5 0 -3 -1; single 5 -1 -2 -1; sink -4 -2 -1 4; sir 6 -7 2 -1; sir> 5 -5 -2 -6; sister 0 -6 1
-5; sit -5 -2 -2 7; sit> -1 4 -3 -8; sits 7 -7 -2 -1; sitting -7 -10 -3 7; six 4 -7 -5 -3; six> 5 -5 -5
-6; size -3 -6 6 -6; skip 8 -5 -6 -4; skipped 7 -5 -3 -3; skipped> 9 -3 -5 -9; skipping -1 -9 -3 5;
skipping> 8 -9 -11 -7; skips -9 -5 -3 5; slammed -3 -1 4 -1; slay 6 -5 -2 -6; sleep -7 10 -11 -9;
sleeping 2 -1 -4 -4; sleeps -11 12 -9 -9; slept 4 1 -1 -6; slight 4 -2 -5 -5; slip 9 -3 -3 -9; slipped 1
-7 5 -8; slipper -3 -8 3 -4; slot 7 -8 -7 -6; slow 4 -4 -2 -1; slowly 5 -6 -4 -4; slurred -16 -4 -5 15;
slurred> -7 -4 -3 11; small 5 -4 -5 -5; smells 3 -3 -1 -2; smth -4 -1 4 -1; smug 6 -4 -1 -5; snap -14 -9
16 -4; snapped -10 -8 12 -5; snow 5 -2 -2 -1; snowed 2 -1 -1 -1; snowing 3 -1 -1 0; so 2 -2 -1 -4; so> 2
2 -9 -8; sock 0 2 -5 -16; sofa 3 -2 0 -1; sole -5 9 -1 -11; sole> -1 6 -1 -6; solid 6 -4 0 0; some 1 -1
-5 -6; somebody -6 -6 -3 7; someone -9 1 5 0; something -5 -11 7 -1; somewhere 5 -1 0 -3; son 7 -4 -3 -5;
song 3 -1 -2 -3; sore 5 1 -5 -4; sore> 7 -5 -3 -3; soreness 6 -6 -3 -3; sorry 4 -3 -1 -1; sorry> 4 -1 -2
-1; sorted 3 -1 -3 -2; sound -11 -10 12 -2; soup -7 6 -2 1; space 5 -2 -3 -1; spare 4 -3 -1 0; speak -9
-6 -3 9; speech -10 -6 -6 11; speech> -6 -1 -1 7; spent 1 0 0 -2; spinning -11 8 -2 -4; split 3 -1 -1 -1;
splits 4 -3 -3 -1; spot 2 -1 0 0; spreadsheets 11 -7 -13 -8; spring 0 0 1 0; squat 0 1 -4 -2; squats 0 2
-3 -2; squats> -1 1 -2 -1; squeezed 7 -2 0 -7; squeezing -4 -3 -5 6; stabbing 3 -15 5 1; staff 4 0 0 -3;
stage 4 -1 0 -3; stairs -11 -2 2 1; stairs> -1 -3 -1 -13; stand -4 -9 9 -6; standing -9 10 -5 -1; stared
1 0 0 0; staring 2 -2 -1 -1; start 4 -2 -1 -1; started 1 -6 -3 2; started> 11 -4 -5 -8; starting 4 -2 -1
-2; starts -2 2 -1 0; static -6 7 -8 -3; station 8 -1 -4 -4; stay -4 6 -3 -7; stayed 3 -1 0 -1; staying
10 -9 -3 -1; stays -8 5 -5 2; step -13 -10 11 2; steps 1 -3 -7 2; stif 7 -2 -3 -3; stiff 10 -8 -1 -2;
stiff> 3 -1 -1 -2; stiffness 7 -6 -1 -1; still -7 6 -5 1; still> 4 -8 -5 5; stinking 11 -2 -5 -6; stomach
10 -6 -3 -12; stone -2 0 -2 -2; stood -8 2 -1 0; stop -2 1 -3 -6; stop> -2 5 1 -3; stopped -2 0 -1 -3;
stopped> 0 1 -1 -6; stopping 2 5 -6 -3; stops -2 -5 -10 4; storm 9 -4 -4 -1; story 4 -1 0 -3; stove 6 -4
-4 -3; straight 6 -2 -4 -8; strap 3 -1 -1 -1; strap> 7 -3 -2 -2; streak 3 -1 -2 -1; streaming 4 -13 -3
-3; street 3 -2 0 -1; strength -14 11 -7 -5; stress 7 -2 -3 -7; stretch 1 1 -3 -3; stretch> -1 2 -5 -4;
stretched 7 -8 -3 -2; stretches 0 -3 1 -1; stretches> 6 -2 -4 -3; stretching 3 -4 0 -1; stretching> 3 0
-3 0; strike 1 0 0 0; strong 5 -17 7 0; stuck 7 -3 0 -4; stuff 5 -4 -1 -5; such -7 -4 2 3; sudden -9 -19
-4 20; sudden> -2 -3 0 4; suddenly -4 -22 -6 16; suddenly> 4 -6 -4 1; sugar -2 -1 0 2; sun 5 -3 -1 -4;
sunday -2 3 -2 -2; sunday> 4 0 -4 -3; sunny 0 1 -1 0; sunrise 3 -3 -2 -3; sunset 2 1 -3 -2; super 1 1 -1
-3; supermarket 3 0 -6 0; supper 2 0 -2 0; sure 2 -4 0 -6; sure> 9 -4 -6 -9; surgery 7 -6 -6 -7; swamped
8 -7 -2 -9; swear 8 -5 -10 -11; sweat -1 -5 -4 3; sweat> -2 -4 -2 2; sweating -9 -5 -2 7; sweating> -4 -5
-3 5; sweaty 3 -2 -2 -2; swell -4 -9 4 -6; swelled -16 -8 17 -6; swelling -18 -13 19 -8; swimming -2 -1 4
-1; switch 6 -3 -3 -4; swole -11 -7 11 -2; swollen -20 -6 23 -4; swollen> -6 -2 6 -1; table 4 -9 -7 4;
tablets 4 -2 -11 -6; take 3 -7 4 -7; taking 1 -3 3 -8; talk -2 -3 -3 2; talked 1 0 -1 0; talks 1 -1 0 0;
tapped 4 0 -3 -7; target 2 -2 0 0; tax 5 -1 -3 0; tbh 6 -2 -2 -2; tbh> 6 -4 -4 -2; tea -3 2 -2 0; tea> 5
-4 -3 2; teacher 7 -4 -2 -2; teacher> 3 0 -1 -1; team 6 -1 0 -4; teething 9 -8 -2 0; telephone 6 -6 -3
-7; tell -5 5 0 2; telly -2 5 -6 -2; temp -10 9 -3 -3; temperature -3 6 -3 -3; ten 0 0 -5 -3; ten> 1 2 -3
-6; tender 8 -4 -6 -3; tender> 3 -2 -2 -2; tennis 3 0 -1 -2; tent 8 -4 -4 -1; terrace 8 -5 -8 -5;
terrible -2 1 -3 1; test 4 -1 -1 -3; texting 3 -3 -2 -2; th 4 -3 -2 -1; th> 3 -1 -1 0; than 0 0 4 -2;
thank 9 -12 -1 -5; thanks 5 -2 -1 -2; thanks> 7 -2 -3 -2; that -3 -3 -2 1; that> 3 -7 1 2; the -2 0 -1 1;
the> 5 -5 -6 -3; theatre 2 1 -1 -2; them 5 -1 1 -6; them> 5 -2 0 -2; then -1 -5 1 0; then> 3 -8 -1 -13;
there -1 -1 -2 1; there> -1 2 -4 2; these 3 2 -3 -7; these> 4 -4 -1 -2; they -1 1 -4 -2; thick -9 -4 8
-4; thigh -8 -5 3 -6; thigh> -2 5 2 -13; thighs 0 -3 -4 3; thighs> 4 -3 0 -2; thing -1 3 -6 -2; thing> 9
-5 -2 -8; things -2 3 -2 0; think -5 -6 3 3; think> 2 -6 1 -8; thinking 1 -1 0 0; third 3 -5 -4 0; thirds
7 -3 -1 -2; thirty 4 -2 -2 -5; this -2 -2 0 0; this> 3 2 -2 -3; those 4 -2 -3 -2; those> 5 -1 0 -4;
though -1 -4 5 -3; though> 3 -3 -2 -1; thought -2 -4 -1 3; thread -1 -1 3 -1; three 5 2 -2 -6; three> 8
-5 -4 -1; threw 9 -6 -4 -2; throat 1 -1 0 0; throbbing -16 -5 17 -7; throbbing> -5 -1 6 0; throbs -11 -8
11 -6; through 3 -5 -3 -3; throwing 7 -6 -7 -12; thumb -6 8 -3 -11; thursday 5 -3 -2 -3; thursday> 4 0 -3
-3; ti 4 -2 -1 -1; tight 5 -7 -2 2; tight> 5 -2 -2 -2; tightness 5 -2 -1 -1; tiles -4 -10 -6 10; till -1
2 -1 -4; time 5 0 -3 -5; time> 3 2 -7 -5; times -4 2 1 -2; times> -2 4 -4 -2; timing 1 -1 0 0; tingle -12
12 -5 -8; tingled -8 9 -7 -4; tingles -16 13 -12 -6; tingles> -7 6 -4 -4; tingling -23 19 -8 0; tingling>
-7 8 -3 -6; tingly -13 14 -7 -7; tiny -4 -4 1 -2; tired -2 -4 -4 4; tired> 2 0 -3 -10; tissues 1 0 0 0;
to 2 -2 -1 -2; toast 3 -1 -7 -6; today 4 -5 -1 -1; today> 6 -3 -3 -5; todays 0 -4 -3 0; toddler 2 -1 -6
-6; toe 3 3 -5 -8; toe> -7 7 -3 -5; toes -12 16 -7 -11; toes> -3 4 -3 -6; together -3 6 -2 -5; toilet -4
-9 -6 4; told 10 -8 -1 -2; tomatoes 4 3 3 -3; tomorrow 4 -2 -2 0; tomorrow> 4 -3 -3 1; tongue -1 -16 -7
6; tonight 1 -5 0 -4; tonight> 6 -1 -3 -1; tonite 6 -2 -2 -1; tonite> 4 -2 -1 -1; too 1 -3 -3 2; too> 3
-5 0 5; took 1 -5 3 -3; tooth 5 -5 -4 -2; totally 3 -1 -2 0; touch 6 -12 1 -1; touch> -8 0 8 -1; touched
3 -2 0 -1; touching 8 -8 -3 -4; tough 7 -6 -2 -5; tough> 5 -1 -2 -4; tour 8 -7 -6 -4; tow -7 8 -5 -6;
towel 7 -6 -2 -1; track 6 -7 0 -10; traffic 3 -1 -1 -2; train 5 -2 -2 0; training 7 -5 -5 -5; trains 2 -2
-2 0; tram -4 4 -1 0; travel 7 -1 -5 -4; travelling 9 -3 -3 -4; travelling> 4 -1 -2 -1; tree 3 3 -5 -3;
tried 3 -3 -4 2; trip -1 6 -4 -4; trouble -7 -9 -4 9; trousers 0 2 -4 -2; truck 4 -3 -2 0; try 9 -7 -1
-1; trying -8 12 -3 -6; tuesday -2 1 -2 1; tuesday> -5 2 -4 4; tulips 3 -2 -1 -1; tummy 13 -6 -4 -9; turn
-1 -7 3 -2; turned 0 -4 0 -2; turning -6 6 0 0; tv 5 -4 -1 -1; twang -6 -5 6 -5; twelve 6 -3 -1 -2;
twenty 6 -2 -2 -3; twice -6 1 6 0; twice> 8 -9 -9 -5; twig -5 0 6 0; twins 6 -3 -1 -6; twist -2 1 -3 -1;
twisted -3 -9 3 -1; two 0 0 -4 0; two> 10 -7 -2 -4; type -2 2 -5 -2; typing 1 -4 -4 -1; typo 1 0 0 0;
tyre 9 -8 -5 -4; ugh 3 -1 -1 -1; ugh> 3 -2 -2 -1; um 4 -3 -1 -1; unannounced 3 0 -2 0; unbearable -18 -8
16 -10; under -9 -2 11 -9; understand 2 0 -2 1; unreal 7 -4 -9 -3; unsubscribe 4 -4 -5 -4; until 2 4 -3
-3; up -4 1 4 -1; up> 5 -1 -4 0; update 3 0 -1 -1; upper 3 0 -1 -1; upset 3 -2 -2 -3; urine -11 -5 -7 8;
urine> -2 -2 -1 3; us 1 0 -1 0; used 8 -7 -5 -8; usual 2 1 -2 -3; v 3 -1 -2 -1; van -1 2 -1 0; version 10
-7 -4 -6; version> 6 -2 -2 -6; very -1 -2 -3 1; vet 11 0 -11 -3; video 3 -3 -3 -5; video> 4 -2 -1 -1;
view 6 -5 0 -1; village 3 -1 0 -2; vision -11 -5 -4 12; vision> -6 -1 -2 7; visit 6 -2 0 -6; visit> 4 -3
-1 -4; visited 5 -3 -2 0; visiting -2 -1 -1 4; visitors 14 -3 -1 -9; visitors> 1 0 -1 0; voice 5 -4 -4
-9; waist 9 -5 -2 -3; wait 6 -3 -2 -1; waited 5 -5 0 0; waiting 8 -5 -1 -3; wake -11 8 -7 8; wakes -19 21
-5 -7; waking -9 10 -7 -6; walk -11 1 8 -6; walk> -10 4 3 -12; walked -1 0 3 -1; walking -8 6 3 2; wall
-1 7 -8 -5; want 4 -5 -3 -2; wanted 3 3 0 -5; wants 9 -6 -2 -1; ward 3 -4 2 -3; warm -6 -14 13 -5; warm>
-4 0 5 0; was 2 -2 0 -3; was> 3 -2 -4 -2; washing 6 -4 3 -11; watch 7 -3 -6 -5; watched 1 -1 -1 -1;
watching 3 -4 -1 1; water -4 -2 0 1; way -12 -5 10 -4; way> 1 -12 0 -2; we 5 -2 -1 -4; weak -25 13 -11
-4; weak> -14 -2 -8 5; weaker -9 9 -7 -8; weakness -24 12 -12 0; weakness> -15 3 -8 0; weather 9 -4 -7
-7; wedding 8 -5 2 -13; wee -10 -4 -8 7; weeding 7 -2 -2 -3; week 1 3 -3 -7; week> 6 -3 -2 -2; weekdays 3
-2 -2 -2; weekend -1 -2 -2 2; weekend> 0 -1 3 -3; weeks 2 4 -3 -9; weeks> 4 -2 -1 -1; weight -11 -1 13
-6; weight> -5 -5 4 -4; weird -4 6 -10 -5; weird> -3 -2 -3 3; well -3 3 -2 -4; well> 8 -10 1 -12; went -6
1 -3 5; were 0 1 -1 -3; wet -7 -5 -5 8; what 2 4 -2 -11; whatever -12 10 -5 -5; when -4 1 -4 0; whenever
-5 4 -3 -2; where 5 -7 -1 2; which 7 -5 -5 -3; whichever -9 4 -3 -2; while -5 3 0 0; who 4 -2 -2 -2;
whole -6 5 -3 4; why 0 3 -5 -4; wife -5 -7 -7 7; wifi 5 -5 0 -2; will -2 1 1 -7; wind 6 -3 -4 -1; window
1 -4 -4 3; windows 0 1 -2 -1; wine 6 -2 -3 -1; wipe -9 -12 -2 13; wire -2 3 -3 -3; wise 7 -3 -1 -3; wish
2 -1 -1 -1; with 1 1 -2 -2; with> -1 2 -8 -9; without -10 8 -5 2; wk 4 -2 -2 0; woke -9 10 -5 2; woke> 12
-3 -10 -10; woken -12 12 -4 -2; won 2 0 2 -1; wonderful -3 2 -3 0; woohoo 4 -2 -1 -3; wool -7 2 -5 3;
woozy -15 11 -5 -8; word 2 -1 -1 -1; words -15 -3 -4 15; words> 0 -1 -3 3; work 6 -2 -1 -2; work> 5 -1 -1
-3; worked 3 -2 -1 0; working 7 -4 0 -3; works 4 -2 -1 -1; works> 7 -6 -3 -3; worried 0 -3 -2 1; worry 2
2 -9 1; worse 3 1 -6 -8; worse> 5 -4 -2 -2; worst -6 -13 7 -8; worth 6 -1 -4 0; would 4 -3 -4 -2; wrist 2
-3 3 -6; wrist> 3 -1 0 -1; wrists 5 -1 -3 -1; write -2 -2 -3 3; writing 2 -1 0 -3; written 4 -4 -8 -5;
wrong -6 -2 -3 8; wrote 4 -1 -1 -3; x 4 -1 -1 -1; x> 6 -2 -2 -2; xx 8 -2 -3 -6; yeah 5 -4 -4 -3; year 0 2
-7 -2; years 5 -5 -4 -6; yellow -1 -8 4 -3; yep 2 -4 -3 -2; yep> 6 -4 -5 -7; yes 6 -6 -3 -2; yes> 10 -9
-3 -3; yesterday -3 -3 1 -2; yesterday> -1 1 -5 -6; yet 8 -3 -2 -3; yet> 9 -1 -3 -4; yoga 11 -10 -1 -3;
you 4 -3 -2 -2; you> 6 -2 -3 -3; young 5 -4 0 -3; your 5 -2 -1 -3; yours 5 -3 -2 -2; yours> 5 -3 -3 -3;
yup 7 -3 -2 -7; yup> 4 -2 -3 -1; zap -5 5 -5 -5; zero 7 -7 -1 -3; zilch 4 -4 -4 -4; zoo -2 2 0 0; zoom 5
-1 -2 -1; ⏰ 3 -2 -1 -1; ☑ 5 -4 -9 -5; ☕ 9 -7 -7 -7; ♀ 4 -3 -3 -3; ♀> 4 -3 -3 -3; ✅ 3 -3 -1 -1; ✅> 5 -3 -3
-4; ✌ -4 5 -4 -4; ✔ 5 -2 -1 -1; ✔> 6 -2 -2 -2; ❌ 6 -3 -3 -3; ❌> 6 -4 -4 -4; ❤ 4 -4 -4 -3; ❤> 4 -4 -4 -3;
➡ 4 -2 -1 -1; 🌙 4 -1 -1 -2; 🌙> 4 -1 -1 -2; 🍮 3 -2 -1 0; 🎉 4 -1 -1 -2; 🎉> 5 -2 -2 -2; 🏃 2 0 0 -1; 🏃> 2 0 0
-2; 🏖 5 -1 -2 -2; 🏖> 2 -2 0 0; 🏼 3 -1 -1 -1; 🏼> 4 -1 -1 -2; 🏽 3 -1 -1 -1; 🏽> 4 -1 -2 -2; 👋 7 -2 -2 -3; 👋>
7 -2 -2 -3; 👌 4 -4 -3 -4; 👌> 4 -4 -3 -4; 👍 7 -3 -2 -2; 👍> 5 -2 -2 -2; 👎 5 -3 -3 -3; 👎> 6 -3 -4 -4; 💀 1 -6
-3 -1; 💀> 1 -5 -4 0; 💃 4 0 -2 -1; 💪 5 -3 -2 -2; 💪> 6 -2 -2 -3; 💫 0 1 -1 -1; 💫> 0 1 -1 -1; 💯 4 -4 -4 -4;
💯> 4 -4 -4 -4; 🔥 5 -4 -3 -4; 🔥> 3 -3 -3 -3; 😂 7 -3 -2 -2; 😂> 5 -2 -1 -3; 😄 4 -2 -2 -3; 😄> 4 -2 -2 -3; 😅 5
-3 -2 -3; 😅> 5 -2 -1 -1; 😊 5 -2 -2 -2; 😊> 6 -2 -2 -2; 😎 3 -3 -3 -3; 😎> 3 -3 -3 -3; 😕 6 1 -2 -4; 😕> 4 2 -3
-5; 😖 6 -3 -2 -1; 😖> 7 -4 -2 -1; 😟 -7 2 1 1; 😟> -3 2 1 -2; 😢 7 -4 -6 -3; 😢> 7 -4 -6 -3; 😣 6 -3 -3 0; 😣> 6
-3 -3 0; 😨 -4 -1 0 3; 😨> -4 -1 0 3; 😩 4 -2 -3 -1; 😩> 4 -2 -4 -2; 😫 4 -2 -1 -1; 😫> 4 -2 -1 -1; 😬 0 -1 0
-3; 😬> 0 -1 0 -3; 😭 1 -3 0 -1; 😭> 4 -4 0 -5; 😮 5 -4 -4 -6; 😰 -2 -2 2 2; 😰> -2 -2 2 2; 😱 -1 0 1 0; 😱> -1 0
1 0; 😳 -4 1 -1 3; 😳> -4 1 -1 3; 😴 4 -3 -3 -3; 😴> 4 -3 -3 -3; 😵 -1 0 -1 2; 😵> -1 -2 -3 1; 🙂 3 -3 -3 -3; 🙂>
3 -3 -3 -3; 🙃 3 -1 -2 -1; 🙃> 3 -1 -2 -1; 🙄 2 0 -1 -1; 🙈 4 -1 -1 -2; 🙈> 4 -1 -1 -2; 🙌 6 -3 -2 -2; 🙌> 6 -3
-2 -2; 🙏 5 -2 -1 -2; 🙏> 5 -2 -2 -2; 🤒 3 -1 -1 -1; 🤒> 3 -1 -1 -1; 🤔 6 -4 -4 -4; 🤔> 6 -4 -4 -4; 🤞 2 -1 -1
-1; 🤣 6 -5 -3 -7; 🤦 2 -1 -1 0; 🤦> 4 -1 -2 -1; 🤧 3 -3 -3 -4; 🤷 6 -3 -3 -4; 🤷> 5 -3 -2 -3; 🥲 3 -2 -1 0; 🥲>
3 -1 -1 -1; 🥳 3 -1 -1 -1; 🥳> 3 -1 -1 -1; 🥵 2 -1 0 -1; 🥵> 3 -1 0 -1; 🧘 7 -6 -6 -6
"""
"""Each entry: a word of at least three replies ("<" first, ">" last, "#" a number, "_" every reply), and its weights in
the order of `suspicion.LEVELS`; 5 is one natural logarithm of the odds."""
