"""Which words usually go with which warning sign. Written by `python -m tests.bench.doubting`, not by hand."""

WEIGHTS = """
! 6 -4 -3 -2; !> 4 -1 -2 -2; # 5 -1 -2 -2; #> 3 -1 -1 -3; % 6 -3 -2 -1; %> 4 -1 -2 -1; & 3 -4 -1 -5; ( 3
-2 0 0; ) 5 -4 -1 -1; )> 3 -1 -1 -1; + 5 -4 -3 -2; , 2 0 -1 -1; ,> 7 -5 -4 -5; - 6 -3 -1 -2; -> 5 -3 -3
-1; . 3 0 -1 -2; .> 4 0 -2 -3; / 5 1 -3 -3; 18:30 3 -1 -1 -1; 20:00 2 -1 -1 -1; 3 -5 5 -4 -4; 5:30 4 -1
-1 -2; 5:45 8 -7 -2 -3; 6 1 0 0 0; 6:15 5 -3 -2 -2; 6:30 4 -3 -3 -2; 6:30> 4 -3 -3 -4; 6:40 8 -5 -2 -4;
6:45 6 -3 -2 -3; 6> 3 -1 0 -2; 7:30 7 -3 -1 -3; 8:15 2 -1 0 -1; 8:30 4 -3 -1 -1; : 6 -3 -2 -2; :> 4 -1 -1
-2; <! 6 -4 -2 -2; <# 1 -4 1 -6; <, 8 -2 -5 -4; <- 2 -1 -1 -1; <. 8 -6 -1 -5; <: 5 -2 -2 -2; <? 10 -4 -5
-1; <a 2 -9 -2 -1; <about 7 -4 -2 -3; <achey 5 -5 -3 -5; <aching 9 -7 -2 -4; <achy 6 -6 -2 -1;
<affirmative 7 -3 -3 -5; <after 0 -8 -11 2; <again 8 -6 -9 -6; <all 6 -4 -10 0; <almost 7 -4 -2 -1;
<already 3 -10 -8 -1; <alright 4 -3 -4 -3; <am 8 -5 -4 -4; <an -5 7 -2 0; <and 8 -7 -3 -4; <ankle -5 -6 6
-3; <ants 0 6 -5 -4; <anymore 6 -5 -4 -4; <are 3 -3 -2 -2; <arm 0 2 -4 -12; <as 5 -5 0 0; <asdfgh 4 -4 -4
-4; <asdkjh 5 -5 -5 -5; <at 1 1 -5 -7; <aye 4 -4 -4 -3; <baby 5 -3 -1 -1; <back 3 -1 0 -5; <bad 5 -2 0
-4; <bailed 5 -3 -2 -4; <baked 4 -1 0 -3; <bar 2 -1 0 0; <became 3 -6 -9 -4; <because 3 -2 -5 -4; <been
12 -11 -4 -6; <before 6 -2 -5 -8; <bet 4 -3 -4 -3; <better 4 -1 -1 -1; <between 2 -5 -1 -1; <big -1 -3 1
0; <bit 4 -2 -1 -4; <bits 8 -4 -7 -8; <black -12 -3 7 -4; <blacked -6 -4 -3 4; <bladder -4 -2 -3 5;
<blurred -6 -5 -2 7; <body 9 -5 -1 -4; <bonjour 2 -1 0 0; <bored 1 -1 0 0; <boss 3 -3 -2 0; <both -1 3 1
-5; <bought 3 -3 -4 -2; <breathtaking 2 -2 -1 -2; <bridge 2 0 -1 -1; <bro 1 -3 -3 -1; <broke 5 -5 -6 -3;
<bruh 5 -5 -4 -3; <bruise -4 -1 4 -1; <bruised -6 -6 6 -3; <burned 4 -1 -2 -1; <burning -14 8 -6 1; <bus
2 0 -1 0; <busy 2 0 -1 -1; <but 8 -5 -8 -2; <buttock 4 -6 0 3; <by 3 1 -3 -5; <calf -2 -5 2 -2; <calves 7
-3 -4 -3; <came -5 -4 -1 4; <can -3 1 -1 -3; <cancel 4 -4 -4 -3; <cat 3 -3 -2 -3; <caught 5 -6 -3 -6;
<cba 3 0 -2 -1; <change 4 -2 -1 -1; <cheers 4 -3 -4 -3; <chest 0 -5 -3 2; <choir 8 -6 -6 0; <cleaned 5 -3
-2 0; <coach -1 -4 0 -3; <complete 9 -6 -2 -1; <completed 6 -3 -2 -3; <completely 7 -5 -1 -2; <cooked 2
-1 0 -1; <could 2 5 -1 -4; <covid 7 -4 -2 -5; <crazy 3 0 0 -3; <cut 3 0 -2 -2; <day 3 -1 -1 -1; <dead 11
-14 -2 -2; <dear 7 -5 -3 -1; <did 5 -3 0 0; <dizzy -7 7 -1 -2; <do 3 -9 -4 -2; <doctor -3 -9 0 5; <does 4
1 -4 -5; <dog 9 -2 -10 -3; <doing 7 -4 -5 -3; <doms 5 -1 -2 -3; <done 3 -2 -3 0; <double 1 -2 -6 0; <down
7 -5 -2 -5; <dress 2 2 -1 -2; <dropped 3 -6 -1 -7; <drove 1 1 -2 -2; <duck 2 -1 0 -2; <dull 6 -3 -2 0;
<dun 4 -3 -2 -2; <during 8 -6 -2 -10; <dying 2 -1 0 0; <easy 7 -2 -3 -3; <effort 4 -3 -2 -1; <elbow -7 -6
7 -4; <electric -4 6 -6 -2; <energy 1 0 0 0; <evening 7 -1 -4 -3; <ever -3 0 -7 1; <every 8 -7 -5 -3;
<everything 1 -1 -5 -3; <exam 6 -3 -3 0; <exams 3 -3 -3 -3; <except 6 -4 -3 -5; <exercise 4 -2 -2 -3;
<exercises 8 -1 -6 -1; <ez 3 -2 -2 -2; <face -7 -3 -5 6; <fainted -7 -3 -1 8; <feel 5 -8 -2 5; <feeling 1
0 -1 -6; <feet -2 4 -1 -4; <fell 4 -3 -5 -4; <felt 4 -2 0 -7; <fever -6 -3 4 -6; <feverish -9 8 -3 -4;
<finally 6 -5 -1 0; <fine 7 -3 -2 -2; <fingers -13 13 -5 -4; <finish -1 -4 -2 0; <finished 4 -4 -3 -1;
<finito 6 -4 -4 -4; <first 4 -5 0 -4; <five 3 -3 -4 -3; <flu 4 -2 -1 -2; <food 6 -2 -2 -4; <foot 2 -1 -6
-6; <football 8 -2 -1 -6; <for 9 -3 -2 -3; <forgot 4 -2 -1 -1; <fr 5 -3 -2 -1; <from 6 -4 -3 -11; <full 9
-4 -2 -8; <garden 7 -5 -5 -5; <gave 11 -1 -11 -1; <get 2 -2 -2 -4; <going 8 -1 -3 -7; <gone 7 -7 -6 -8;
<good 4 -1 -1 -1; <got 3 -4 -4 -7; <grandkids 0 -3 2 0; <grandma 2 -1 -1 0; <great 4 -2 -1 -2; <groin 1
-12 -4 1; <guests 4 0 -1 -3; <guten 4 -1 -2 -2; <gym 5 -1 -2 -2; <had 5 -3 -2 -5; <haha 3 -3 -4 -4; <half
7 -7 -3 -2; <halfway 8 -8 -4 -2; <hamstring -3 -9 6 -4; <hamstrings 4 -3 -1 0; <hand -6 5 0 -4; <hard 4
-1 -1 -1; <hardly -2 -11 5 -8; <has 4 -6 -2 -6; <have 2 -5 -3 -5; <having 6 -8 -11 3; <head -2 2 -7 -1;
<health 1 0 0 -1; <heard -3 -2 3 0; <heart -3 -7 -3 5; <heavy 2 -3 -1 -1; <hecho 1 0 0 0; <held 4 -3 0
-1; <hello 1 -1 -5 -1; <helped 2 -1 0 0; <here 5 -1 -3 -1; <hey 5 -1 -2 -3; <hi 6 -3 -6 -1; <hip 3 -2 -3
-5; <hips 6 -4 -4 -2; <hiya 6 -3 -3 -3; <honestly 1 0 0 0; <hope -3 -2 -2 3; <hot 9 -12 1 -2; <hotel 2 0
-1 0; <how 12 -5 -5 -2; <hurts 2 -1 -6 -3; <i 1 -2 -1 -1; <ich 4 -1 -1 -1; <idk 4 -4 -4 -4; <ill 5 -1 -2
-2; <in 9 0 -7 -15; <inbox 4 -4 -3 -2; <is -1 0 -2 -5; <it 5 -4 -4 -5; <ja 4 -3 -1 -1; <jaw -15 -7 -8 14;
<just 2 1 -2 -6; <k 3 -3 -3 -3; <kept 5 -6 -3 -4; <kid 5 -3 -1 -2; <kids 1 0 0 0; <kinda 7 -1 -3 -3;
<kindly 7 -3 -2 -3; <knee 4 -4 -2 -6; <knees 10 -9 -2 -4; <l 4 0 -3 -2; <last 3 -2 -9 0; <late 3 -2 -1 0;
<later 8 -4 -3 -2; <left 2 -7 -3 -1; <leg 2 -2 -1 -7; <legs 0 5 -3 -14; <less 4 -3 -1 0; <light -9 5 -3
-3; <lighter 7 -3 -7 0; <like -11 4 -2 -2; <little 4 -1 -2 -3; <load 4 0 -3 -1; <lol 7 -5 -4 -2; <long 3
-3 -3 0; <lost -1 -1 -3 -1; <lovely -2 4 1 -7; <lowkey 2 -1 -1 -1; <lunch 4 -4 -2 -2; <made 3 -1 -1 -1;
<managed 8 -2 -1 -6; <many 2 -1 0 -1; <market 3 -1 -1 -1; <mat 7 -1 -4 -2; <maybe 0 -1 -1 -14; <me 9 -8
-9 -4; <meeting 4 -3 -1 0; <might 3 -2 -3 -3; <migraine 5 -1 -2 -3; <missed 4 -1 -2 -1; <more 6 -2 -2 -2;
<morning 4 -5 0 -3; <most 5 -2 -2 -2; <mostly 2 -1 -1 -1; <move 5 -5 -4 -1; <moving 5 0 -4 -1; <mowed -2
-2 -2 2; <mum 4 -2 -2 -2; <muscle 2 0 -1 0; <muscles 1 0 0 0; <must 10 -3 -6 -10; <my 2 -4 -4 3; <nah 4
-4 -3 -3; <nearly 5 -5 -7 -3; <neck 4 -3 -1 -2; <neighbour 7 -1 -2 -4; <new -3 -1 -1 1; <next 3 -2 0 -3;
<ngl 4 -1 -1 -2; <nice 2 -1 0 -3; <night -9 11 -3 -3; <no 2 -3 0 -4; <none 10 -8 -1 -2; <nope 6 -5 -2 -5;
<not 13 -9 -3 -5; <nothing 7 0 -1 -5; <notice -2 4 -3 -4; <noticed -1 4 0 -7; <now 5 -4 -7 -6; <numb -7 0
-8 6; <numbness -10 7 -8 -1; <of 9 -6 -10 -3; <off 14 -1 -4 -12; <oh 1 -1 0 0; <ok 8 -6 -3 -3; <okay 6 -5
-1 -2; <omg 5 -5 1 0; <on 6 -9 -5 3; <one -4 -8 4 0; <only 11 -5 -6 -4; <or 3 -2 -2 1; <ouch 5 -3 -3 -3;
<oui 3 -3 -3 -2; <our 3 -3 0 -1; <out 5 -5 -4 -4; <outer -2 8 -4 -2; <overslept 5 -2 -2 -1; <pain 5 -1 -4
-1; <palpitations -4 -8 -2 8; <parents -1 -3 3 -3; <part 8 -2 -4 -3; <partly 8 -3 -3 -3; <passed -6 -3 -6
5; <pause 7 -3 -2 -2; <phone 3 -3 0 -1; <physio 3 -3 -2 -4; <picked 0 -1 1 0; <pins 1 1 -4 -2; <played -1
-7 2 -5; <please 4 -2 -1 -1; <pop -3 -1 3 -2; <popped -7 -7 8 -2; <pose 3 -2 -1 0; <power 8 -2 -1 -6;
<pressure -1 -6 -2 5; <pretty 4 -1 -1 -4; <probably 3 -3 -3 -4; <pulled 0 -7 2 -11; <put 3 -4 -3 -3;
<quarter 6 0 -3 -4; <quick 3 0 -3 0; <quiet 8 -5 -2 0; <quit 3 -2 -2 -3; <qx 3 -8 -4 -3; <r 4 -3 -2 -2;
<ran 5 -3 -1 -1; <reached 9 -8 0 0; <read 3 -2 -1 -2; <ready 3 -3 -2 -2; <really -3 -9 -7 5; <rehearsal
-2 -4 -1 5; <rest 2 -1 -1 -1; <right -4 -4 -2 2; <room -6 7 -10 -10; <rounds 2 -1 -1 -2; <routine 1 -2 0
1; <said 7 -4 -2 -2; <same 7 -4 -1 -1; <sat 1 5 -4 -3; <saw 3 -8 -9 1; <school 1 -3 1 0; <seeing -5 -6 -5
6; <send 5 0 0 -5; <session 7 -4 -2 -3; <set 6 -6 -3 -1; <seven 6 -2 -2 -1; <severe -6 -4 3 0; <sharp 5
-9 8 -3; <shooting -4 6 -4 -8; <shorter 6 -3 -3 -2; <shot 7 -3 -1 -3; <should 11 1 -7 -8; <shoulder -3 -3
5 -4; <show 5 -3 -3 -1; <si 5 -5 -3 -2; <sick 3 -1 -1 -1; <since -2 -1 -4 0; <sir 5 -6 2 -2; <skipped 5
-4 -2 -2; <slept 15 -14 0 0; <slight 5 -4 -6 -5; <slipped -2 0 2 -2; <slurred -4 -3 -2 8; <so 2 -5 -2 -1;
<some 5 -17 5 -4; <something -3 -9 4 -2; <sore 11 -6 -3 -2; <soreness 2 -4 4 -3; <sorry 6 -1 -2 -3;
<sorted 3 -3 -3 -3; <speech 2 -1 -2 -2; <spent 0 -1 1 -3; <squeezing -2 -2 -4 3; <started 11 -8 -1 -3;
<stiff 3 -1 -1 -1; <stiffness 1 0 -1 -1; <still 7 -6 -3 -11; <stomach 3 -2 -2 -1; <stop 14 -8 -5 -3;
<stopped 6 -8 -2 -2; <streched 3 -2 -1 -2; <stretch 4 -4 -3 0; <stretched 4 -2 0 -1; <stretches 6 -4 -1
-5; <stretching 6 -1 -2 -3; <stuck 2 0 -1 -1; <sudden -4 -9 -6 8; <suddenly 0 -4 -1 3; <sunny -4 5 0 0;
<sure 6 -1 -2 -4; <swam 0 1 -1 -3; <swamped 2 -1 -1 0; <swollen -5 -1 7 -1; <take 3 -2 -4 -1; <tax 4 -1
-2 -1; <teacher 10 -1 -6 -8; <ten 12 -7 -2 -10; <tender 8 -4 -6 -1; <thank 2 0 -1 -1; <thanks 7 -3 -2 -2;
<that 8 -3 -2 -5; <the 3 -4 -2 -3; <there 0 0 -1 -5; <thigh -8 -9 14 -3; <thing 8 -8 -6 -3; <think 5 0 -2
-3; <this 5 0 -5 -7; <thought 7 -1 -4 -4; <thread 2 -1 -1 0; <three 5 -2 -1 -2; <threw 9 -6 -7 -3;
<throbbing -5 -4 4 -2; <tight 0 -2 -2 3; <tightness 2 -1 -1 0; <tingling -8 1 -4 2; <tingly -2 5 -2 -1;
<to 1 0 -1 -3; <toast 5 -5 0 -1; <today 11 -8 -2 -5; <toes -5 4 -2 -3; <tomorrow 8 -2 -2 -4; <tonight 6
-2 -4 -3; <too 2 -3 2 -6; <took 5 -2 -7 0; <traffic 5 -2 -3 -1; <train 4 -3 -1 -1; <travelling 5 -2 -2
-2; <tried 9 0 -7 0; <twice 8 -3 -4 -4; <two 5 -3 -1 -2; <unbearable -9 -6 8 -5; <unsubscribe 4 -4 -5 -4;
<up 0 2 -5 -3; <v 1 0 -1 0; <very 6 -3 -1 -3; <wakes -3 4 -5 -2; <walked 5 -3 -4 -2; <want 3 -3 -1 0;
<was 5 -9 -2 -3; <watched 3 -6 -1 -1; <way 10 -9 -9 -7; <we -1 1 1 1; <weak -1 9 -4 -9; <weakness -8 4 -5
-3; <week 3 -2 -1 0; <weight 0 2 -12 -5; <well 7 -6 -3 -3; <went 4 2 -3 -13; <wet -13 -3 -3 6; <what -1
-4 2 -4; <when 1 -1 -2 -6; <where 7 0 0 -6; <which 6 -8 -5 -2; <while 6 -4 -5 -6; <who 7 -3 -5 -3; <whole
2 -4 -3 4; <why 12 -8 -8 -5; <wife 3 0 0 -2; <wifi 3 -3 -1 -2; <will 8 -2 -3 -3; <with 0 -4 -1 -4; <woke
1 3 -14 -9; <words -4 0 -1 4; <work 4 -2 -2 -1; <worked 1 0 1 -1; <worse 9 -8 -5 -2; <wrist 7 -2 -7 0;
<xx 3 -1 -2 0; <yeah 6 -5 -4 -3; <yep 2 -4 -3 -2; <yes 4 -2 -2 -2; <yesterday 3 -3 0 0; <you 6 -4 -3 0;
<yup 7 -3 -2 -6; <zero 1 0 -1 0; <zilch 5 -4 -5 -4; <✅ 5 -4 -4 -2; <✔ 6 -4 -4 -3; <❌ 5 -3 -3 -3; <🎉 6 -2
-2 -2; <👌 4 -3 -3 -3; <👍 7 -3 -3 -2; <👎 6 -3 -3 -3; <💀 3 -4 -3 -3; <💪 5 -4 -3 -3; <🔥 4 -3 -3 -3; <😂 7 -5
-4 -3; <😎 3 -3 -3 -3; <😴 3 -3 -3 -3; <🙌 6 -2 -2 -2; <🤒 5 -1 -2 -2; <🤧 4 -1 -1 -2; <🤷 6 -4 -5 -4; = 3 -2
-1 0; ? 2 -1 -1 -5; ?> 2 -1 0 -7; _ 12 -4 -4 -4; a -3 0 -1 -2; a> -9 4 -8 2; ability 10 -2 -5 -4; able 2
-9 -2 3; about 3 -1 -3 0; about> -1 -3 -3 3; above 6 -6 -3 -3; abs 2 -2 -1 -1; accident -7 -8 -7 7; ache
3 -1 -6 -4; ache> 7 -3 -3 -1; aches 13 -3 -8 -4; aches> 0 1 -5 -2; achey 7 -7 -6 -4; achey> 7 -7 -4 -3;
achilles 5 -2 -1 -2; aching 9 -4 -6 -7; aching> 7 -5 -3 -1; achy 12 -3 -4 -5; achy> 7 -3 -4 -1; acke 6 -4
-4 -1; across 7 -3 -4 -2; action 1 0 -1 0; actually 8 -5 -1 -2; adn 4 -1 -2 -1; advanced 6 -1 -1 -4; af 2
1 -4 -2; af> 2 -2 0 -1; affirmative 7 -3 -3 -5; afraid 8 -4 -2 -3; after -4 -1 -1 0; after> 0 -3 -3 -1;
afternoon 0 -4 -2 0; afternoon> 0 -5 -5 1; afterwards -11 0 4 4; again -2 4 -3 -5; again> 3 -6 -4 -1; age
-1 -14 -8 2; age> 7 -3 -1 -4; ages 5 -4 -1 -3; ago -3 -2 -6 2; air -12 -6 -2 13; airport 6 -5 -2 -7;
alarm 8 -1 0 -7; all -1 0 -1 -1; all> 7 -5 -1 -7; allotment 4 -1 -2 -1; almost 0 -6 -3 1; along -6 6 -5
-12; already 1 2 -6 -4; already> -5 5 -2 -8; alright 4 -3 -4 -3; also -3 -2 0 3; also> -3 3 -5 -3;
although 9 -5 -1 -6; always 2 2 -1 -2; always> 3 3 -1 -7; am -3 -1 -3 2; am> 1 0 -4 -7; amazing 6 -4 -5
-2; an -2 0 -2 0; and -5 2 0 1; and> 5 -5 -3 -13; ang 3 1 -1 -4; ankle -9 -2 8 -10; ankle> 7 -5 -6 -4;
ankles -7 -7 8 -3; another 4 -2 -1 -2; answer -2 -3 5 0; answers 2 0 0 -2; ants -7 10 -6 -7; any 0 -3 2
-6; any> 11 -5 -6 -8; anymore 1 1 -2 -2; anymore> 6 -4 -3 -4; anything 1 -6 -7 4; anyway 1 1 0 -5;
anyway> 2 -1 -4 -3; anywhere 5 -3 -1 -2; apart 6 -6 -1 -5; app 4 -1 0 -2; apples 1 0 -1 0; appointment 9
-7 -1 -5; appointment> 2 0 -1 -1; are 3 -1 -1 -5; are> -3 0 -1 1; area 5 -7 -2 6; arm -10 6 -3 0; arm> -4
-1 4 -4; arms 2 0 -3 -1; arms> 5 -1 -3 -1; around 0 -9 1 7; arrived 1 -2 0 -4; arthritis 7 -6 -5 -3; as
-3 7 -5 -6; asdfgh 4 -4 -4 -4; asdkjh 5 -5 -5 -5; ask 6 0 -1 -6; asked 3 -3 -1 -3; asking 3 -5 0 -2;
asleep -5 6 -7 -2; asleep> -1 6 -6 -10; at -1 1 -2 -1; at> 1 0 -1 -1; ate 1 1 -2 -6; atm -7 8 0 -1; attic
-1 1 -2 -3; aunt 4 -1 0 -4; autocorrect 3 -3 0 -2; awake -8 8 -2 -2; away -7 -3 4 -3; away> -2 5 -4 -6;
awful -8 8 -2 -2; aye 4 0 -6 -8; baby 8 -7 -4 -1; back -3 3 -2 -5; back> -3 -3 3 -6; backs 9 -5 -2 -3;
bad -5 -1 -14 2; bad> -1 -8 -3 3; badly -5 2 0 2; bags -4 0 2 2; bailed 5 -3 -2 -4; baked -2 2 -4 0;
bakery -2 2 0 -1; baking 2 -1 -1 -2; balance 7 -4 -6 -2; balcony 4 -1 -5 -7; ball -5 -2 5 -4; balloon -2
-5 6 -6; balloon> -5 -2 6 -5; balloons 4 -2 -2 0; band 5 -3 -3 -1; bank 3 -1 -1 -2; bar 8 -2 -2 -8;
barbecue 6 -3 -4 0; bare 7 -4 -8 -1; barely -3 0 0 3; barn 2 -4 5 -2; bath 3 -3 -2 -3; bathroom -7 -4 -3
8; battery 6 -1 -1 -4; be 1 0 5 -5; beach 3 -3 -2 -4; beans 3 -2 1 -2; bear -7 -7 8 -5; beat 2 -5 -5 0;
beating -11 -3 1 10; beats -11 -2 -2 11; beats> -5 -3 -1 5; beautiful 8 0 -3 -5; became -5 -2 -1 7;
became> -1 3 -4 -6; because 4 0 -2 -4; become -3 6 0 -2; bed -1 -1 -2 0; bed> -1 -4 -4 4; bedroom 3 0 -2
-1; beds 2 -1 0 -1; been -5 1 0 -3; been> -1 0 -4 4; before -2 -4 -2 4; before> -1 -13 -10 9; began 3 -6
-4 0; begin 4 -2 0 -1; beginning 5 -1 -3 -2; behind -8 -11 1 5; being 0 -2 -6 0; believe 2 -1 -3 -6;
belly 6 -2 -1 -4; below -3 -14 0 3; belt 1 -8 -3 8; bend -4 6 -5 -12; bend> 6 -4 -3 -7; bendier 10 -2 -1
-8; bending -4 6 -4 -7; bending> -5 7 -4 -7; bends 1 0 -2 -3; bent -1 -1 0 0; best 2 -1 0 -1; bet 4 -3 -4
-3; better 5 0 -7 -4; better> 9 -9 -3 -5; between 5 -18 -1 16; beyond 5 -1 -3 -1; bicycle 1 2 0 -2; big
-4 1 5 -9; bigger -8 -2 9 -3; bike -1 -4 -1 3; bill 4 -2 0 -5; bin 2 1 -1 -3; binged -3 3 0 -1; bins 3 -2
-1 -1; birds 6 0 -4 -2; birthday -1 2 -5 -3; biryani 2 0 -1 -1; biscuit -6 8 -3 3; biscuits 4 -2 0 0; bit
1 -1 -8 -1; bit> 1 -1 -2 0; bits 6 -10 -3 4; black -9 -11 6 4; blacked -14 -5 -3 12; bladder -9 -12 -3
12; blanket 2 0 -1 0; bless 1 0 0 -1; block -3 4 -5 -7; blocks 3 -1 -1 -1; blood 3 -2 -3 -3; blown -7 -5
9 -2; blue -8 -8 4 -1; blue> -9 -8 1 1; blurred -14 -5 -3 15; blurry -11 -6 -4 8; board 5 -3 -1 -1; boat
4 -1 1 -7; body -3 -4 -3 9; body> -5 -9 -1 9; boiled 9 -6 -2 -4; boiler 3 -2 0 -1; boiling 6 -6 -3 -3;
bone -1 0 -5 0; bonjour 2 -1 0 0; book 2 -1 -1 0; boots 3 -3 -4 -3; bored 10 -5 -7 -3; boredom 4 -2 -1
-2; boring 2 0 0 -1; boss 6 -3 -1 -3; boss> 3 -2 -1 -1; bot 4 -1 -2 0; both -1 -1 -1 -2; bothered 9 -5 -8
-4; bottom -7 -5 -6 5; bought 3 -3 -3 -2; bowel -5 -3 -5 4; bowels 0 -4 -2 1; bowling -4 0 4 -3; box 8 -7
0 -1; boxes 2 -2 2 -3; boy 4 -4 -3 -4; boys 3 -1 0 -1; braai 2 -1 -1 -1; brain 3 0 -1 -2; bread 4 -3 -1
-2; break 5 -2 -2 -3; breakfast 3 -2 -3 -3; breakfast> 3 -3 -3 1; breast -4 -6 -4 9; breastbone -11 -9 -9
10; breath -12 -6 -10 11; breath> -6 -3 -4 4; breathe -12 -12 -10 16; breathe> -7 -2 -4 7; breathing 10
-1 -6 -10; breathless -13 -4 -6 12; breathlessness -9 -10 -12 11; breaths 2 -1 0 -1; breathtaking 5 -5 -1
-6; bridge 5 -2 -4 -9; bridge> 5 -5 -2 -4; bright 5 0 -4 -1; bring 1 0 0 0; bro 3 -4 -4 -3; bro> 4 -5 -4
-4; broke 4 -3 -1 -3; broken 11 -9 -9 -8; brother -5 -9 -7 6; brought -2 -5 2 -4; bruh 5 -5 -3 -3; bruise
-18 -13 21 -5; bruise> -5 -1 7 -2; bruised -13 -5 13 -8; brutal 2 -1 0 0; btw 3 -1 -1 0; buckets -1 0 0
1; buckled -11 -1 11 0; buckles -10 -11 12 -13; buckling -12 -6 13 -4; bug 3 -2 -2 -2; bug> 2 -1 -1 0;
building 6 -5 -1 -2; built -1 -1 2 0; bum -12 9 -8 4; burned 5 -3 -2 -5; burning -13 14 -4 -4; burnt 3 -2
-3 -2; burst 5 -1 -1 -4; bus 0 -4 3 -5; bus> 6 -1 -5 -1; busy 4 -1 -1 -1; busy> 6 -1 -2 -2; but 0 2 -2
-2; but> 8 -4 -6 -9; butt 6 -3 -1 -1; buttock -8 -3 -12 7; buttocks -1 -5 -1 6; button 11 -1 -1 -12;
buzzing -17 9 -6 -5; by 2 -1 -1 0; c 3 -1 -1 -1; cab 3 -6 0 -6; cake -2 3 -3 -5; calf -10 0 9 -8; calf> 0
3 -2 -6; call 4 -2 -1 -1; call> 2 -1 -2 -2; called 9 -3 -6 0; called> 3 -1 -1 -1; calling -1 -2 -4 5;
calls 7 -4 -2 -5; calm 0 3 -3 -6; calmed 6 -2 -1 -3; calories 6 -5 -5 -4; calves 2 -3 3 -1; calves> -4 5
-6 -7; came -4 -1 -4 0; came> 8 -2 -6 -6; camera 5 -2 -1 -4; camp 1 0 0 0; can -5 -3 -1 5; canada 2 0 0
0; cancel 4 -4 -4 -4; cancel> 4 -1 -1 -3; cancelled 2 -1 -1 -1; candle 8 -6 -1 -3; candlelight 8 -1 0 -8;
canteen 3 -1 0 -1; capitals 3 -1 -1 -2; car 1 -6 3 -2; cards -3 -4 2 -1; carpet 0 -1 -2 1; carried 0 -2 6
-3; carry -6 -10 10 -7; carrying 1 0 2 0; cat 8 -5 -3 -4; cat> 3 -2 -2 -2; catch 1 -2 -4 2; cats 10 -10 0
-1; caught 2 -2 -2 0; cause -4 -3 -5 7; cba 3 0 -1 -1; ceiling 4 -3 -2 -1; ceiling> 4 -3 -2 -2;
celebrated 1 -1 0 0; centre 0 5 -7 -6; certain 7 -4 -1 -7; chair 1 -1 -3 -3; chance 5 -1 -2 -1; chance> 4
-2 -2 -3; change 4 -2 -1 -1; changed 6 -1 -2 -3; changed> 7 -3 -3 -3; changing 2 -4 4 -5; chaos 1 0 0 0;
chat 11 -1 -1 -10; checked -3 5 -5 -9; checking 2 -1 -1 -1; cheers 4 -3 -4 -3; cherries 2 -1 -2 0; chest
-18 -12 -7 23; chest> -5 -4 -1 9; child 4 0 -5 -11; children 11 -9 1 -7; chilli 1 0 -1 0; chips 3 -1 0
-2; chocolate 8 -4 -7 -5; choir 2 -3 -1 1; choir> 8 -2 -2 -5; christmas -1 -2 1 -2; church 1 0 -3 -1;
cinema -5 6 0 0; circles -9 3 6 -12; city 4 -3 0 -2; class 4 -2 -2 1; class> 6 0 0 -5; clean 6 -5 -1 -4;
cleaned -3 0 1 0; cleared 5 -2 -1 -4; client 1 0 0 -1; clients 5 -4 0 0; climb -4 0 0 -1; climbed 0 2 -2
-3; climbing -3 -2 -4 5; clock 5 -1 -1 -4; closed 3 -1 0 -2; club 1 -4 -1 2; cm 5 -3 0 -1; coach 5 -3 -1
-2; coach> 4 -1 -2 -2; coast 2 0 -4 -3; cobra 9 -7 -4 -4; coffee 2 -6 0 -4; coffee> 8 -3 -2 -2; coffees 3
-1 -1 -1; cold 4 -6 -2 2; cold> 1 -3 -2 0; colleague 2 -1 -1 0; colleagues 1 -1 0 0; colour -4 -4 4 -4;
come 2 -9 -3 6; comes -10 -2 1 3; comfortable 4 -4 -4 -3; comfortable> 4 -4 -4 -3; coming -3 4 -1 1;
commute 4 -1 -1 -2; company 5 0 -1 -4; complained 4 -1 -2 0; complaints 6 -2 -3 -2; complete 5 -3 2 -4;
complete> 1 2 -2 -3; completed 2 3 -3 -4; completed> 7 -5 -4 -3; completely 5 -2 -2 -1; completely> 3 -2
-3 -2; concert 0 4 1 -9; conductor 2 0 -1 -1; conference 7 -1 -1 -4; consciousness -16 -5 -3 14; constant
-9 9 -6 -5; constant> 9 -7 -3 -4; constantly -3 3 -3 -3; control -17 -7 -6 16; cook 1 0 0 0; cooked 5 -4
0 -1; cooking 3 -3 -3 -3; cool 3 -3 -2 -3; cool> 3 -3 -2 -3; cork 1 0 2 -2; corner 0 -2 -3 2; correct 3
-1 -1 -2; correction 4 -1 -1 -3; corridor 2 2 -2 -2; costume 2 -2 0 0; costumes 5 -3 -1 -1; cosy 1 0 0
-1; cottage 3 -3 -1 -2; cotton 2 -2 -5 1; couch 7 -2 -1 -4; cough 13 -8 -5 -4; cough> 5 -3 -1 0; could 0
-6 0 4; could> 5 -1 -2 -3; count 10 -5 -3 -7; count> 12 -3 -3 -7; counting 10 -5 -7 -4; country 2 -1 0 0;
couple 1 4 -2 -3; courbatures 4 -3 0 0; course 4 -1 0 -3; cousin 2 0 1 -2; cousins 7 -6 -2 -6; covid 7 -3
-1 -5; cow -3 2 -1 -4; cox 4 -4 0 0; crack -18 -12 22 -2; crag 4 -3 0 0; cramp 6 -4 -8 -9; crashed 4 -6
-1 -4; crawling -6 8 -3 -5; crazy 4 -7 -2 -2; crazy> -4 -6 1 -2; cream 4 -1 -2 -1; crew 6 -5 -3 -6;
cricket -2 -2 2 -1; cried 1 2 -5 -3; crime 3 0 -2 -2; crochet 5 -4 -2 -1; croissant 4 -3 -2 0; crooked 3
-2 -1 -1; crossword -3 3 -2 -1; crushed 3 -2 -1 -1; crushing 4 -6 -8 0; cry 1 0 0 0; crying 2 -1 -1 -1;
cup -1 -7 -4 3; cup> -1 -2 0 3; cuppa 7 -4 -3 -1; cups -5 6 -3 -4; current -10 5 -4 -4; curry 4 0 -1 -3;
curtain -1 -4 -4 9; curtains 8 0 0 -7; cut 10 -10 0 -1; cut> 2 -1 0 0; cycle 2 0 0 -1; cycled -5 7 -4 -3;
cycling 3 -2 0 0; dad 11 -4 -4 -11; daily 2 0 0 -1; dance 5 -5 -1 -2; danced 1 -5 3 -2; dancing 8 -4 -1
-8; dark -3 -2 -3 3; dark> 3 -3 0 -4; dash 5 -2 -1 -2; daughter 1 -4 -3 1; dawn 8 -7 -3 -3; day 1 -6 1
-2; day> 7 0 -6 -14; days -2 0 -4 -2; days> 6 -4 -3 2; de 2 -1 -4 -6; dead -5 8 -9 -7; dead> 2 2 -4 -11;
deadline 11 -2 -1 -8; deadlines 13 -11 0 -3; dear 7 -3 -7 0; dear> 6 -2 0 -5; deep 7 -3 0 -7; degrees -2
-2 4 -3; delayed 1 -1 0 0; deliveries 4 0 0 -3; delivery 1 -3 4 -3; dentist -1 -2 -3 0; denver 4 -3 -1
-1; derby 1 -2 -2 1; desk 4 -1 -1 -2; despite -1 1 -3 0; di 8 -6 -2 -3; diagnosed 10 -8 -6 -6; diagnosed>
5 -3 -3 -5; diagnosis 6 -1 -4 -1; did 5 -4 -1 -1; did> 8 -3 -2 -4; died 4 -2 -1 -2; diet 2 -1 -6 -8;
different 4 -1 0 -3; difficult 9 -1 -4 -3; difficult> 4 -2 0 -2; digging 8 -4 -2 -2; dinner -3 1 -3 -2;
dinner> 10 -7 -4 -7; discomfort 1 -7 -2 0; dishes 4 -1 -2 -1; dishwasher 3 -2 -1 0; dizzy -30 28 -5 -6;
dizzy> -5 5 -4 -3; do 4 -6 -4 -2; do> 3 -4 -3 -2; doctor 6 -2 -8 -8; does -8 2 -3 2; does> 4 0 -12 -3;
dog -2 -4 -4 5; dogs 2 -1 -1 -1; doing -2 -3 -3 -1; doing> 9 -8 -5 -12; doms 9 -4 -6 -2; doms> 4 -2 -1
-3; done 6 -2 -3 -2; done> 7 -3 -3 -6; door 5 -9 -4 -3; doorbell 11 -9 -3 -3; doorway 1 0 -1 -5; dorm 4
-4 -1 0; double -15 -8 2 12; double> -3 -1 -3 3; down -3 2 -3 -2; down> 4 -8 1 -2; downs -6 7 -1 0;
downward 0 0 -1 -2; drama 5 -3 -2 0; drank 0 0 0 -2; dress 2 2 -1 -2; drill 2 -3 -1 2; drilling 10 -3 -2
-8; drills 5 -1 -2 -2; drink 0 -8 -8 2; drive 2 -3 -1 -6; driver 1 0 0 0; driveway 2 0 0 -2; driving -2
-1 4 -1; drooped -8 -2 -3 6; drooping -17 -2 -4 8; drooping> -7 -3 -3 4; droopy -8 0 -1 10; drop -6 7 -2
-2; dropped 2 -4 1 -1; dropping -3 5 -3 -6; drove 1 3 -1 -4; drum 1 -6 3 -5; drunk 0 -2 -1 3; dry -5 5 0
0; duck 4 -4 -2 -3; ducking 10 -4 -4 -8; due 9 -5 -1 -5; dug 6 -4 -6 -4; dull 9 -5 -3 -1; dun 4 -3 -2 -2;
during -10 7 -3 0; dust 4 -1 -1 -2; dusted 3 -3 -2 -3; dusted> 4 -3 -3 -3; duty 1 0 0 0; dying 2 -1 0 -1;
e 9 -9 -7 -4; each 3 -1 -1 -2; earlier 1 -1 -1 -1; early 0 -3 -3 3; early> 5 -2 -3 -5; ears 3 -1 -2 0;
ease -8 10 -2 -6; ease> -3 3 -2 -4; eases -2 4 -2 -1; easier 9 -1 -7 -2; easter 9 2 -1 -3; easy 3 0 -1
-1; easy> 3 -1 -1 -1; eat 1 0 0 -1; eaten 5 -2 -5 -3; eating 9 -6 -2 -2; effort 4 -2 -1 -1; eggs 2 0 1
-1; eggs> 5 0 -1 -4; ego 4 -1 -1 -2; eight 1 -2 -6 2; eish 3 -5 4 -13; either 9 -5 -2 -1; either> 7 -2 -1
-4; elastic 5 -4 0 -3; elbow 0 -2 -1 -6; elbow> 3 -3 -2 -2; electric -14 11 -5 -8; electricity -7 5 -3
-6; elephant 0 0 -2 3; eleven 9 -6 -1 -3; else 3 2 -5 -3; else> 1 0 -3 -2; elsewhere 7 -7 -1 0;
elsewhere> 3 -2 -1 -1; emails 5 -3 -1 0; embarrassing -7 -3 -2 7; emergency 3 -2 -2 -1; empty 1 -1 0 0;
end 0 -5 -4 1; end> 1 0 -4 -6; ended 5 -2 -1 -1; endless 1 0 0 0; energy 9 -11 -7 -5; energy> 5 -1 -2 -2;
english 7 -3 -6 0; enjoyed 3 -1 -1 -1; enough 6 -4 -7 -7; entire 4 -1 -2 -1; entirely 4 -3 0 0; episodes
4 -4 -3 -3; erg 3 -2 -1 -1; essays 6 -4 -1 -3; euros -2 -1 2 -2; even -1 -6 -7 8; evening -1 -4 1 -1;
evening> 8 -3 -5 -5; evenings 3 -3 -3 -1; ever -11 6 7 -2; every -5 7 -3 -3; everybody -2 2 0 0; everyone
1 0 -3 -2; everything -2 0 -3 0; everything> 5 -9 1 -1; everywhere 2 -1 -1 -1; everywhere> 3 -1 -1 -1;
exact 2 0 0 -1; exactly 2 -1 0 -1; exam 5 -3 -2 -6; exam> 2 0 -1 0; exams 8 -3 -2 -9; except 8 -5 -3 -5;
excited 1 0 0 0; excitement 3 -2 -1 -1; excuse 5 -3 -2 -1; exercise 0 0 -1 -2; exercise> -4 0 -2 -5;
exercises 6 -4 -3 -4; exercises> -3 3 -5 -3; exhausted 3 -2 -2 -3; extra 4 -4 -1 0; eye -8 -2 -1 12; eye>
-1 -1 -2 4; eyes 4 -1 -1 -4; eyes> -5 -1 -1 5; ez 4 -3 -3 -4; face -2 -16 -5 9; faint -14 -8 -9 16;
fainted -26 -7 -6 27; fainted> -5 -3 -4 6; fair 5 -3 -2 -3; fait 4 -2 -1 -2; fall -2 -4 4 -8; fallen -7
-7 -4 7; falling -3 3 -2 -6; fam 8 -2 -7 -2; family 10 -5 -2 -6; fan 1 1 -7 -1; far 6 -5 -1 -2; farm 5 -5
-5 -7; fasting 3 0 -1 -1; fat 0 -4 10 -1; father -12 -9 -5 13; fave 6 -6 -5 -4; favourite 5 -4 -3 -3; fed
3 -3 0 -3; feel -6 2 -1 -3; feeling -5 4 -8 0; feeling> 7 -9 -2 0; feels -2 6 -10 -1; feet -6 8 -4 -8;
feet> -2 2 -4 -4; fell 0 -1 -3 1; felt -7 1 6 -2; felt> 6 -8 -9 2; fence 6 -1 -3 -2; fever -16 16 -2 -13;
feverish -8 8 -3 -5; few -10 -2 -4 4; field 5 -4 -3 -2; film 0 -4 0 -3; final 4 -1 -1 -2; finally 4 -3 1
-1; finals 3 -2 -1 -1; find 6 -1 -2 -1; fine 4 -3 -5 -5; fine> 1 -1 -5 -2; finger -2 9 -7 -10; fingers
-10 13 -3 -10; fingers> 1 -1 -4 -5; fingertips 0 4 -1 -9; fini 5 -5 -3 -3; finish 5 -3 -3 -4; finish> 1 3
-8 -3; finished 3 0 -4 -2; finished> 4 -3 -5 -4; finishing 3 -3 -2 -3; finito 6 -4 -4 -4; fire 7 -5 -1
-3; first 2 -2 1 -4; fish 1 -1 -6 0; fish> -11 -6 -1 12; fishing 5 1 -7 -1; fit 3 -3 -1 -2; five 5 -4 -2
-4; five> 6 -1 -3 -2; fixed 5 -1 -3 -1; flat 1 -1 2 -3; flatmate 3 -3 -1 -3; flea -3 0 3 0; flexible 4 -1
-1 -1; flexor 6 -6 -5 -4; flight -4 -1 1 0; flooded 6 -2 -1 -2; floor -2 -1 -1 -1; floor> -2 0 -6 2;
floors 2 -1 -1 -1; flow 3 -1 -1 -6; flu 9 -4 -2 -4; flu> 4 -3 -2 -2; flue 7 -7 -7 -6; flue> 1 0 0 -1;
fluttering -9 -4 -4 7; fly 1 0 0 0; flying 0 2 -3 -2; fold -6 8 -5 0; fold> -1 -5 1 3; folds -9 3 9 -1;
food 4 -1 -1 -2; foot -15 12 4 -9; foot> 4 -2 -1 -5; footbal 3 -2 -1 -3; football 2 -3 0 -3; football> -1
-2 4 -2; footy 2 -3 4 -3; for -1 2 -4 0; force -11 2 -11 4; forearm 6 2 -1 -2; forearms 4 -3 0 -1;
forever -3 -3 3 -3; forget 2 -1 1 -1; forget> 6 -2 -2 -2; forgot 10 -2 -2 -6; forgot> 7 -1 -1 -5;
forgotten 3 -1 -1 -1; form 6 -1 -1 -5; forty 5 -1 -1 -4; forward -4 3 -1 0; forward> 4 -4 -1 0; found -2
-5 -7 4; four 3 -3 -2 -3; four> 9 -3 -3 -4; fourth 5 1 -6 0; fr 7 -3 -2 -2; free 9 -8 0 -4; free> 5 -1 -2
-3; freezing 1 1 -1 -4; fresh 4 3 -3 -6; friday -4 2 -2 -9; friday> 7 -3 -3 -6; fridge -2 2 -1 -3; fried
8 -8 -5 -9; friend 4 -7 -3 1; friends -1 2 -5 -2; frog 6 -8 0 -3; from 0 0 -2 -1; from> 8 0 -5 -2; front
4 -5 -3 -2; frost 2 -2 -1 -4; froze 5 -5 -2 -1; full 0 -6 0 0; full> 4 -2 -6 -3; fully 3 -5 -4 -2; fully>
0 -4 -4 1; fun 2 -14 1 2; function 2 0 -2 -1; funeral 12 -3 -3 -11; funny -5 -2 -8 4; further 10 -7 -2
-6; game 5 -7 1 -4; gaming 2 -1 -1 0; garage 3 -4 2 -2; garden -1 -4 -1 3; gardening 3 -5 2 -2;
gardening> 3 -2 -2 -2; gas 5 -1 0 -3; gasping -7 -6 -4 7; gate 0 -2 0 0; gave -6 -6 9 -7; geese 6 -4 -3
0; get -1 7 -6 -3; get> 9 -9 -5 -8; getting -4 1 1 -4; girl 5 0 -3 0; girls -1 -5 4 -1; give 6 -2 -3 -3;
gives -15 -7 13 -5; giving -6 -4 9 -3; glad 1 -1 0 0; glass 1 -1 -1 0; glasses 3 1 -2 -6; glute -4 3 -3
-8; glute> -3 5 -7 -1; glutes 9 -1 0 -9; gn 6 -3 -3 -3; go -5 1 -1 2; go> -1 2 -1 -4; god 2 -1 -1 0; god>
7 -3 -2 -2; goes -6 0 2 3; goes> 1 -4 -3 -1; goggles 2 6 -5 -6; going -2 0 -9 3; going> -3 5 -2 -3; gone
-3 4 -5 -3; gone> 2 1 -4 -4; good 6 1 -5 -5; good> 8 -4 -2 -1; goodness 1 0 -1 0; gorgeous 8 -3 -3 -6;
got -4 4 -1 -3; grandchildren 7 -4 -2 -1; granddaughter 2 4 -2 -3; grandkids 3 -3 0 -2; grandma 1 -1 -1
0; grandson 3 -5 -2 -5; grapefruit -3 -1 3 0; grass -5 2 6 0; grate 9 -4 -6 -3; great 5 0 -8 -3; great>
10 -6 -3 -3; green -1 0 2 0; grey 1 -1 0 1; grip -13 10 -4 -7; grippe 10 -3 -1 -8; groin 1 -19 3 12;
groin> -7 -8 3 -2; gross 3 0 -1 -3; ground 9 -3 -2 -7; group 0 1 0 0; gtg 11 -9 -1 -2; guess 4 -3 -3 -3;
guess> 6 -2 -2 -3; guest 9 -6 -2 -7; guests 6 -2 -1 -3; guests> 4 -2 -1 -2; guilty 6 -6 -2 -1; guitar 1 0
0 0; guten 4 -1 -2 -2; guy 4 -4 -7 -3; gym 8 -4 -4 -5; gymnast 4 0 -2 -3; ha 3 -1 -1 -1; had -2 1 -6 3;
had> 8 -6 -7 -8; haha 5 -3 -3 -2; haha> 4 -2 -1 -1; hair 0 -2 5 -4; half 1 -3 -2 2; half> 4 -1 -3 -5;
halfway 0 -2 0 -2; halfway> 4 -15 -2 -7; hall 1 3 -1 -5; hallway -1 -1 3 -1; hamburg 6 -4 -4 -5;
hamstring -4 -3 5 -6; hamstring> -2 -1 2 -1; hamstrings 6 -3 -1 -1; hamstrings> 8 -3 -6 0; hand -8 11 -4
-8; hand> -8 7 -4 -5; hands -10 10 -3 -9; hanging -10 -4 -5 13; hanging> -5 0 -4 7; hangover 6 -1 -2 -2;
hangs -7 0 4 6; happen 3 -1 -1 -2; happen> 8 -1 -3 -4; happened -4 -2 -4 1; happy 7 -4 0 -3; happy> 6 -1
-2 -3; hard 6 -2 -6 0; hard> 5 0 -2 -2; harder 5 -5 -3 -2; hardly -8 -7 5 2; hart 0 -3 -4 1; harvest 2 0
0 -1; has -5 0 0 -1; hate 3 -3 -1 -2; hated 3 -3 0 0; have -4 3 -1 -1; have> 9 -1 -7 -5; having -3 3 -5
-1; he 3 -3 -2 -3; head -9 11 -8 -6; head> -2 -2 -3 3; headache 5 -6 -6 -4; headed -12 9 -3 -4; health 8
-1 -2 -5; hear -5 -3 5 -5; heard -6 -5 8 -5; heart -4 -11 -8 11; heartbeat -9 -11 -3 7; heat 2 -1 -1 -1;
heating 8 -6 -2 -1; heavy -2 -6 -3 6; heavy> 1 -3 -3 2; hecho 2 -2 -1 0; hedge 2 -1 0 -1; heel 0 0 4 -5;
heel> -13 3 3 -3; heels 2 -1 -1 -2; held 5 0 -1 -4; hell 4 -4 0 0; hello 2 -3 -4 -2; hello> 4 -4 -3 -4;
help 4 -4 -5 0; help> 1 -7 -7 0; helped 2 -2 -3 -1; helps -7 8 -1 0; helps> -3 3 0 0; hens 2 -1 0 -1; her
6 -5 -6 -5; her> 12 -11 -6 -8; here 1 -2 -2 -2; here> 5 -9 -4 -4; hey 6 -2 -1 -3; hi 6 -3 -6 -1; hi> 6 -5
-1 -4; high 2 0 -1 -1; hike 3 -1 -1 -1; hike> 3 0 -1 -1; hill 3 -4 -3 3; him 6 -3 -2 -1; himself 1 0 0
-1; hinge 5 -10 -4 0; hip -3 4 0 -7; hip> -2 0 -2 -4; hips -1 3 -2 -2; hips> 6 -1 -1 -3; his 3 -9 3 -8;
hit 0 -6 -2 3; hiya 6 -3 -3 -3; hold -5 -2 -3 4; holding 4 -3 -9 5; holds -2 4 -1 -1; hole -2 -5 4 -7;
holiday 4 -8 -1 -1; holiday> 2 -1 -1 0; holidays 2 -1 0 -2; home 3 -3 -3 0; home> 6 -2 -3 -4; homework 7
-1 -3 -5; honest 8 -1 -5 -4; honestly 6 -5 -2 -3; hooray 7 -7 -2 -2; hope 3 -8 -2 0; hopping -10 -6 7 -6;
horrible 4 -2 -1 -2; horse 6 -5 -3 -3; hospital 0 -11 -8 6; hot -5 -2 3 -10; hot> 0 -4 1 -4; hotel 6 -4
-1 -1; hotel> 3 0 -1 -1; hour 4 -5 -3 -1; hour> -1 2 -3 2; hours 3 1 0 -3; hours> 3 0 -3 -1; house 6 -4
-4 -3; house> 0 1 -2 -3; hovering 4 -1 -3 -2; how 2 -2 -5 -1; however 3 3 -3 -4; hr 2 -1 0 0; hrs 6 -5 -2
-2; huge 2 -4 1 -1; hundred 6 -5 -3 -9; hung -7 1 -5 2; hungry 6 0 -1 -5; hurt 7 -4 -3 -1; hurt> 0 -14 3
-5; hurted 6 -6 -1 -1; hurting 6 -1 -6 -6; hurting> 1 0 -3 -4; hurts 2 2 -3 -2; hurts> 1 -1 -8 1; husband
0 -10 -6 7; i 1 -2 -1 0; i> 6 -7 -8 -8; ice -2 -1 4 -1; ich 4 -1 -1 -1; id 3 -2 0 -1; idea 1 0 -1 -2; idk
1 -1 -5 -3; if -8 -3 5 -2; ill 8 -1 -2 -3; ill> 7 -4 -3 -2; impossible 9 -6 -4 -1; in> 5 -3 -2 -2; inbox
3 -3 -2 -2; indoors 5 -4 -2 -6; infection 11 -5 0 -10; inner -2 -5 -2 5; inshallah 4 -1 -2 -1; inshallah>
4 -1 -2 -1; inside -2 -5 1 -1; instead 6 -5 -1 -3; instead> 3 -2 -2 -2; interest 8 -3 0 -5; internet 8 -5
-2 -4; interview 2 -2 -1 -2; into -2 1 -9 1; ironing -1 -1 6 -4; irregular -11 -8 -6 12; irregularly -10
-4 -4 9; is -2 -1 1 1; is> 3 0 -10 -6; it 1 -1 0 -2; it> -1 -3 4 -1; itself 0 -1 -3 0; itself> -11 6 -8
3; ja 4 -3 -1 -1; jab 4 0 -1 -4; jam -3 3 -1 -2; jar -3 3 -2 -3; jars 5 -2 -1 -1; jaw -7 -7 -4 6; jaw> -4
-2 -2 7; jelly 5 -5 1 -4; jetty 2 -4 -6 0; jk 5 -2 -2 -1; job 3 0 -1 -1; jobs 6 0 -2 -5; join 3 -1 0 -2;
joined 5 -2 -2 -1; joint -12 7 6 -6; joke 1 0 0 -1; jokes 7 -6 0 -1; joy 7 -1 0 -6; jumbled -4 0 -1 4;
jump 5 -4 5 -6; jumped 8 -3 0 -7; jumper 7 -6 -1 0; jumpers 1 0 0 0; jumping -5 0 0 6; june 7 -8 -2 -3;
just 0 -5 -3 2; k 4 -1 -2 -6; k> 3 -3 -3 -3; karaoke 3 -3 -3 -6; keep -6 3 -1 1; keeps -11 5 3 -1; kept 1
2 -6 -7; kettle 7 1 -4 -10; keys 2 0 0 -4; kg 7 -1 -8 -3; kick 4 -3 0 -2; kicked 0 -7 3 -4; kid 13 -12 -5
-7; kids 5 -4 -2 -4; kids> 5 -2 -2 -1; kill 5 -4 -2 -1; killer 4 -2 -2 -1; killing 8 -5 -9 -10; kilo -6 6
-8 -3; kilometres 6 -2 -2 -3; kilos -4 5 -1 -4; kind 3 -3 -2 -3; kinda 3 -3 -3 -2; kindly 6 -2 -2 -2;
kitchen -9 -2 -3 7; kitchen> 4 -3 2 -4; kittens 1 -1 0 -1; km 4 -4 0 -3; knackered 10 -1 -3 -10; knee 0
-6 7 -7; knee> 3 1 -6 -4; kneeling 0 -6 2 -1; knees 4 -10 2 -2; knees> 5 -2 -2 -4; knitting 7 -5 -1 -3;
knocked 5 -6 -2 -4; know -1 -2 0 -1; know> -3 -1 -2 3; knows 1 0 0 0; knows> 1 -1 0 -1; krakow 2 0 -1 -1;
l 4 -1 -1 -2; ladder -3 -1 2 -5; ladies 3 -1 0 -2; lads 0 -3 0 -3; lake -2 -2 2 2; lamp 1 0 -1 0; landed
1 0 0 0; landing 4 -2 -4 -3; laptop 5 -4 -1 -1; lasagne 2 -1 -1 0; last 1 -4 1 -2; last> 6 -1 -4 -4;
lasted -3 6 -2 3; late 5 -3 0 -6; late> 4 -3 -1 -1; lately -5 6 -3 -10; later 5 -2 -2 -3; later> 6 -2 -3
-2; laugh 7 -2 -1 -4; laughed 6 -7 -7 -4; laughing 5 -1 -1 -3; laughing> 2 -2 -4 -1; laughter 7 -3 -2 -4;
laundry 8 -7 -3 -8; law 8 0 -1 -7; lawn 1 -2 -3 2; laws 2 0 0 -1; lay 2 2 -3 -3; lazy 5 1 -4 -3; leaf 3
-3 -3 -6; league 3 0 -2 0; leaked -2 0 -4 3; leaking -3 -1 -1 4; learning 2 -1 0 -1; least -1 -1 -2 -1;
leave 3 2 -3 -3; leaves -2 -1 2 0; lecture 5 -4 -4 -6; lectures 5 -1 -3 -2; leeds 10 -8 -1 -2; left 0 -1
1 -2; left> 1 0 -2 -3; leg -11 7 2 -7; leg> -11 1 0 -4; leggings 8 -2 -3 -5; legs -3 -2 -5 1; legs> -10 2
-4 1; lengths 4 -2 0 -6; less 4 2 -4 -13; less> 2 -2 0 0; lesson 4 -4 -1 -4; let 2 -2 -2 -4; level 8 -3
-3 -4; library 1 0 0 -1; licence 2 0 -1 -1; licking -4 -1 0 4; lie -1 3 -3 -5; lie> 3 -2 -5 -1; life 1 0
-4 0; lift 4 0 -6 0; lifting 3 -7 -1 -7; light -7 6 -3 -3; light> 10 -9 -5 -9; lighter 11 -3 -8 -4;
lighter> 9 -2 -4 -5; lightheaded -15 15 -5 -5; lightning -12 10 -4 -8; lights -8 -6 5 4; like -1 1 -1 -2;
like> 3 -3 1 -1; liked 3 -2 -2 0; lil 3 3 -10 -8; limping -12 -11 14 -10; line 4 -3 -2 -3; lisbon 2 -1 -1
-1; list 3 -3 -2 -4; list> 7 -4 -7 -3; listen 3 0 0 -3; listening 3 -1 -1 -1; literally -6 0 -1 6; little
7 0 -4 -4; little> 7 -4 -4 -2; live 0 3 -3 -2; living 3 -1 -2 -4; lmao 6 -4 -3 -2; load 1 -11 8 -9;
loading 3 0 -2 -2; loads -5 9 -2 -2; loaves 4 -1 0 -3; lol 1 -2 -2 -2; lol> 5 1 -1 -11; long 3 0 -4 -4;
longer 9 -3 -5 -9; loo -1 -4 2 2; look -3 0 -6 2; looked 8 0 -3 -6; looking 3 -7 4 0; looks 2 -5 2 -5;
loose 8 -5 -3 -13; lorry -4 -1 -4 1; lose -2 3 -4 -4; loser 8 -7 -2 -3; losing -10 3 -4 3; loss -8 13 -12
-9; lost -9 2 -4 6; lost> 8 -5 -5 -6; lot 1 -1 -3 -7; lot> 2 1 -8 -4; lots 3 0 -3 -1; loud -6 -2 5 -4;
love 6 -2 -7 -5; loved 5 0 -1 -3; lovely 3 -2 -1 -7; lovely> 4 -2 -3 -2; low -2 -1 0 2; lower 3 -3 1 -4;
lowkey 2 -1 -1 -1; luck 3 -1 -2 -1; lunch 4 -1 -4 -2; lunch> 3 -3 0 -3; lunchtime 4 -1 -2 -1; lunge 3 -5
0 -4; lunge> 4 -4 1 -4; lunges 3 -4 -2 -1; lunges> 4 -3 -2 -4; lvl 6 -5 -1 -2; lying -8 0 -4 7; lyon 2 -1
0 0; m 3 -1 0 -1; ma 2 -5 1 -6; machine 4 0 -4 0; mad -7 -1 0 1; mad> -2 3 -4 -3; madam 5 -3 -6 -3; made
1 -5 2 -3; make 4 -4 -4 -2; makes -3 -2 -9 1; making -2 -6 -1 3; man 7 -9 -2 0; man> 4 -3 0 -1; manage 11
-6 -8 -2; managed 6 -4 -1 -3; manila -4 -1 0 5; many 7 -3 -5 -2; marathon 3 -1 -1 -2; margaret 8 -8 -3
-1; mark 3 -4 0 -2; market 0 -2 1 1; marking 1 -1 -1 -1; married 11 -3 -6 -6; mat 3 -6 -3 0; mat> 6 -5 -8
-1; match 1 -2 2 -2; mate 4 -3 -4 -3; mate> 9 -3 -3 -4; mates 2 -3 -2 -1; maths 6 -4 -3 -2; matter 4 -4
-4 -1; mattress 1 1 -2 0; max 5 -4 -5 -5; may 7 -11 0 -2; maybe -7 -2 -3 5; maybe> 8 -5 -9 -9; me -2 1 -1
-4; me> -1 -3 -1 -1; mean 4 -3 -5 1; mean> 3 -2 -1 -3; means 6 -1 -5 0; meant 6 -6 -2 -1; medicine 4 -2
-7 -3; meeting 7 -4 -1 -8; meeting> 3 -1 -2 -1; meetings 6 -3 -1 -2; meetings> 6 -1 -1 -3; melon -5 -1 7
-4; memory 5 -5 -2 -7; men 2 0 -2 0; mention -5 3 -1 -3; mess 4 -2 0 -2; message 5 -1 -1 -3; messages 4
-2 -2 -2; messages> 4 -2 -1 -1; met -2 0 2 -1; mid 4 -4 -3 -2; middle -4 4 -4 -1; midnight 3 -4 1 -3;
might 2 -2 1 -5; migraine 12 -8 -2 -4; migraine> 2 0 -1 0; miles 1 0 -4 -3; milk 6 -4 -1 -7; min 0 -5 -2
0; min> -4 -1 -3 0; mind 1 -3 -3 -3; mine -2 -10 -6 5; mins 2 -5 0 0; mins> 4 -2 -2 -1; minus 3 -3 -2 -5;
minute 0 -5 -4 2; minute> -1 -7 -7 7; minutes 0 -1 -1 2; minutes> -1 -5 -4 2; miss 7 -1 -7 -2; miss> 7 -3
-7 -2; missed 8 -2 -3 -4; missing -7 -5 -1 7; mom 4 -2 -1 -2; moment -8 5 -6 6; mon 3 4 -1 -5; monday 4
-2 -4 -3; monday> 3 -3 -3 -1; month -6 7 -3 -4; months -3 4 -1 -4; mood 5 -1 -1 -1; mood> 5 -3 -4 -3;
moon 2 -1 0 -1; more -1 0 -3 0; more> -4 1 -2 3; morgen 2 0 -1 0; morning 3 -4 -1 -1; morning> 0 1 -3 -2;
mornings 1 0 0 -1; mortifying 9 -5 -5 -6; most 6 -1 -2 -2; most> 7 -2 -2 -3; mostly 5 0 -1 -3; mother -4
-8 -6 9; motivation 8 -3 -4 -4; motivation> 4 -3 -4 -2; mountain 5 -4 0 -3; mouth -9 -10 -4 12; move 3 6
-8 -4; moved -2 3 -1 -2; movements 6 -2 -2 -2; movers 0 1 0 0; moves 5 -5 -3 -4; moving 6 -2 -2 -3; mowed
0 -2 -2 2; msg -4 -4 -2 5; msgs 5 -2 -1 -2; much 0 -3 2 -3; much> 2 -2 0 -3; muffins 1 -1 0 0; mug 0 -2 0
2; mum 1 -4 -4 0; murder 4 0 -3 0; murdered 4 -2 -2 0; muscle 3 -6 3 -6; muscles 5 -4 -1 -1; museum 8 -7
-3 -6; music 0 0 -2 1; must -6 -4 -3 7; my -4 0 2 1; myself -8 -12 -7 12; myself> -8 -1 -1 8; na 2 -2 0
0; nah 4 -4 -3 -3; nah> 4 -3 -4 -3; name 5 -4 -6 2; names 9 -7 -3 -5; nan 2 -2 0 0; nap 4 -3 -1 -4;
napped 1 -1 0 0; nasty 3 0 -1 -2; near 5 -1 -3 -1; nearly -1 -6 -2 0; neck 5 0 -3 -3; neck> -4 0 2 -2;
need -3 -4 -3 4; needed 6 -5 -1 -4; needle 3 -2 -2 -2; needles -10 10 -4 -3; needs 3 -3 -3 -3; neighbor
-2 0 2 0; neighbour -10 -3 -4 9; neighbours 4 -3 -1 -2; nephew 5 -3 -1 -1; nervous 1 3 -1 -1; netflix 4
-1 -1 -1; never 5 -4 -4 -5; new -1 -6 -2 3; new> -3 -4 -3 3; news 5 -4 -4 0; next 0 -8 -7 5; ngl 3 -2 -2
1; ngl> 6 -3 -2 -3; nice 1 0 -1 -6; nice> 4 -4 -7 -2; nicely 2 -3 1 0; niece -4 -4 -1 5; niggle 7 -2 -4
-1; night -11 10 -6 -1; night> 6 -7 -1 -3; nights -7 10 -6 -10; nine -3 0 1 -2; nite 1 -1 0 0; no -1 1 2
-4; no> 11 -3 -6 -3; nobody -5 -5 5 -3; noise -2 1 2 -2; none 6 -2 -2 -1; none> 10 -4 -2 -7; noon 4 -5 0
3; noon> 10 -9 -1 -6; nope 6 -4 -2 -4; nope> 4 -1 -2 -1; normal 4 3 -8 -7; nose 10 -3 -4 -6; not -5 -1 1
2; note 4 -2 -2 -1; nothing 1 -6 -4 2; nothing> 0 -8 -6 3; notice -8 0 -5 2; noticed -4 3 1 1; noticing
-4 -4 -3 4; novel 4 -3 -1 -1; now -3 -2 2 1; now> 2 -1 -3 -7; nowhere -10 -5 -6 12; numb -21 14 -10 4;
numb> -9 4 -5 2; number 7 -4 -5 -1; numbness -19 13 -11 -1; nursery 3 0 -2 -1; o 3 -3 -1 -1; obviously 5
-4 -4 -1; oclock 4 -6 -3 0; oclock> 3 0 -1 -2; odd 3 -6 -4 2; of 0 0 -2 -1; of> 4 -4 -6 -3; off 0 -7 1
-3; off> 5 -2 -5 -4; office 1 -4 -1 0; office> 5 -1 -3 -7; oh 4 0 0 -3; ok -1 -2 -7 -3; ok> 2 -1 -3 -5;
okay 3 2 -2 -8; old 6 1 -1 -4; omg 6 -5 1 0; omg> 3 -1 -1 -1; on -3 -4 3 -1; on> 0 2 -4 -7; once -1 -6 -4
6; once> 6 -1 -1 -5; one -2 -3 -1 0; one> 6 1 -6 -10; ones 4 -4 -4 -6; ones> 3 -3 -3 -5; onions 5 -3 -3
-3; only 1 -1 0 -2; only> 4 -2 -2 -4; oops 6 -2 0 -4; open 6 -1 -2 -7; opened 11 -7 -7 -12; opener 8 -4
-4 -8; operation 5 -10 5 -14; or 9 -3 1 -12; or> 3 -2 -3 -2; orange 1 0 0 0; orchestra 5 -4 -1 0; order 7
-5 -1 -1; osteoporosis 5 -4 -1 -2; other -3 -9 7 -5; other> -2 -3 3 -2; others 4 0 -2 -1; others> 3 -1 -3
-2; otherwise 3 0 -2 -4; ouch 5 -3 -2 -3; ouch> 6 -4 -4 -4; oui 3 -3 -3 -2; our 5 -5 0 -1; out -2 -7 1 4;
out> 3 -6 -7 -1; outer -1 9 -3 -9; outside 4 0 -5 -6; oven 6 -3 -3 -1; over -6 -1 -2 4; over> -5 8 -14
-14; overhead 3 0 -3 -6; overnight -10 -6 10 -7; overslept 6 -3 -2 -2; overslept> 6 -5 -2 -3; overtime 8
-4 -1 -6; ow 8 -6 -6 -4; own 4 -1 -2 -1; packed 3 -1 -1 -5; pages 1 0 0 0; paid 6 -5 0 -1; pain 1 2 -3 0;
pain> -4 -2 1 -1; painful 3 -5 -1 -5; painful> 6 -4 -5 -4; paining 2 -3 -7 -2; paining> -4 5 -8 -11;
pains -10 3 -17 2; paint -2 -2 6 -1; painted 5 -4 -3 -1; palpitations -17 -13 -8 19; palpitations> -9 -5
-3 9; pan 1 0 0 0; pancakes 5 -1 -1 -3; paper -15 -7 -11 16; papers 1 -1 -1 0; parcel 6 -5 -1 -1; parents
2 -3 3 -3; park 4 -2 1 -7; parked -6 -3 -4 6; parking 1 1 -1 -5; part 5 -1 -2 -2; part> 5 -2 -1 -2;
partly 8 -3 -3 -3; party 5 -2 -1 -1; pass -5 -13 -7 11; passed -16 -6 -6 15; past 0 2 -1 -1; pasta 3 -1
-1 -2; patch 0 -2 2 -8; patience 4 -3 -2 -3; patients 7 -3 -6 -7; pause 5 -3 -1 -2; pause> 8 -2 -2 -4;
peace 5 -4 -4 -4; peas -3 5 3 0; peasy 3 -1 -1 -1; pee -12 -14 -6 19; pee> -5 -4 -5 6; peeling -3 -5 -1
5; penalties 3 -3 -3 -5; people 0 0 -1 -2; percent 6 -5 -1 -3; percent> 8 -1 -1 -6; perhaps 6 0 -4 -5;
period 5 -5 -2 -2; period> 3 -3 -2 -2; person 5 -3 -1 -2; phone 5 0 -9 -2; photo 4 -2 -1 0; photos -3 0 3
0; physio 3 -3 -4 -4; piano 10 -7 -1 -4; pick 8 0 -1 -7; picking 2 0 0 -1; picture 4 -7 -4 -3; pictures 5
-4 -2 -1; piece 3 -1 -1 -1; pieces 4 -1 -1 -3; pigeon 8 -1 -2 -5; pillow -3 5 -4 -5; pinky -4 7 -3 -12;
pins -8 9 -4 -3; pit -7 0 7 0; pitch 0 2 0 -2; pizza 3 -3 1 -3; place -6 -5 -4 9; plan 7 -5 -2 -3; plan>
1 0 0 -1; plane 5 -1 -3 -2; plank 6 -4 -2 -4; plank> 3 -2 -5 -3; planks 5 -4 2 -3; planks> 3 -6 3 -6;
planned 8 -7 -4 -1; planning 1 0 0 0; plant 8 -2 -5 -3; planted 5 -5 -1 -2; plants 3 -4 -2 -3; plate 0 -2
0 -1; platform 3 0 -1 -1; play 2 -3 3 -1; played 0 -6 1 -4; playing 0 -1 -6 -2; playlist 3 -1 -1 -2;
pleasant 3 -2 -1 -1; please 4 -2 -1 -1; please> 5 -3 -3 -2; pleased 3 -3 -3 -5; pleasure 2 -1 -1 -1; plum
-5 -4 5 -2; plumber 7 -5 0 -1; plums 6 -4 -1 -1; plus -10 10 -3 -2; pm 4 -2 -1 -1; pm> 4 -3 -3 -1; point
8 -5 -3 -2; poisoning 5 -2 -1 -3; pool 1 -4 -5 0; poor 6 -5 -6 0; poorly 8 -6 -5 -5; pop -21 -9 23 -2;
pop> -3 -2 3 -4; popcorn 6 -1 -7 -4; popped -22 -9 24 -5; popped> -5 -1 6 -1; porch 6 -4 -7 -5; porridge
7 -3 -1 -2; porridge> 4 0 -1 -2; portugal 1 -1 0 0; pose 2 2 -4 -5; pose> 8 -6 -2 -2; poses 1 0 -1 0;
position -4 6 -1 -8; possible -2 -4 4 -3; post 2 0 0 -1; postman 4 -2 -1 -3; pot 2 0 -1 0; potatoes 2 -4
-1 1; pounds 2 1 0 -4; power -3 10 -11 -11; practice 7 -9 3 -5; pray 2 -2 0 0; prefer 3 -2 0 -1; pregnant
6 -2 -2 -5; pregnant> 7 -4 -3 -4; press 4 -1 -1 -2; pressed -3 -8 -6 7; pressing -3 -11 -9 12; pressure
-14 -3 -3 13; pressure> -2 -2 2 2; pretty 4 -1 -2 -1; price 2 -1 0 0; prickling -13 13 -8 -5; printer 3
-3 0 0; prob 2 -9 -4 1; probably 3 -3 -2 -2; problem 2 -6 -5 0; problem> 4 -9 -8 -2; problems 5 -4 -6 -5;
program 10 -4 -3 -4; programme 6 -2 -1 -3; programme> 4 -2 -2 -3; project 2 0 -1 -1; promise 6 -3 -2 -2;
promise> 3 -1 -1 -1; proper -8 5 -1 -3; properly -7 2 -5 2; properly> -6 3 -6 -1; proud 4 0 -1 -2; pub -1
1 0 -1; puffed -4 -3 5 -2; puffy -4 -4 4 -4; pull 14 -10 -7 -8; pulled 1 -7 -1 -8; puncture 1 -1 0 0;
pune 4 0 -3 0; puppy 7 -7 -3 -1; purple -8 -10 10 -5; push -6 4 -3 -3; pushing 3 -2 -1 -1; put 1 -13 6
-9; putting 2 -1 -1 -1; pyjamas 6 -5 -7 -6; quads 7 -3 -3 -1; quads> 2 0 0 -1; quarter 4 0 -1 -2;
quarters 4 -1 -2 -1; question 8 -8 -7 -7; queue 4 -5 -3 0; quick 4 0 -2 -2; quiet -1 2 1 -1; quit 5 -9 -6
-2; quit> -5 -3 -4 5; quite 2 0 -3 1; quiz 2 -1 0 -1; qx 1 -1 -2 -4; qx> -4 1 -1 -2; r 4 -2 -2 -1; race 4
-4 -4 -1; racing -11 -5 -2 11; radiates -8 10 -8 -1; radio 7 -5 -5 -2; rain 11 -10 -5 -8; rained 5 -1 -2
-2; raining 9 -10 -1 -1; rainy -1 3 -1 0; ramadan 4 -3 0 -1; ran 2 2 -2 -2; rang 5 -1 -1 -3; rang> 3 -2
-1 -1; rate 1 -1 -3 -2; rated 4 -1 0 -3; rather 3 -1 -2 0; rd 2 -5 0 -1; reach 2 0 -1 -1; reached 2 -3 2
-2; read 1 2 -1 -3; reading 4 -3 -2 -5; ready 1 2 -2 -2; real 4 -1 -1 -2; really -1 -1 -3 -1; reason -9
12 -10 -8; receive 1 0 -1 -1; recipe 4 0 -1 -4; reckon 3 -2 0 -1; record 2 0 -2 0; red -6 1 4 0; regatta
0 -1 -1 2; regular -10 0 -1 11; rehearsal 0 -1 -1 -3; remember 3 -8 -7 0; remember> 5 -3 -4 -13; reminder
4 -1 -2 -1; reminders 3 0 -2 -1; rep -1 -2 2 -3; repaired 3 -2 -3 -4; report 11 -6 -7 -6; report> 9 -1
-10 -5; reports 1 0 0 0; reps 4 -4 -2 -2; resistance 5 -1 -4 -1; rest 9 -11 -2 -3; rest> 4 -3 -2 -1;
restaurant 11 -2 -11 -10; results 3 -3 -2 -3; reunion 8 -2 -1 -6; revision 6 -3 -2 -4; reward 5 -3 -2 0;
rhythm -4 0 0 4; ribs -5 -5 5 0; rice 4 -4 -3 -3; ride 3 -1 -3 -3; right 1 0 1 -4; right> 3 -2 -2 -8;
ring -7 2 4 -6; ringing 2 0 -1 -1; ripe 1 -1 0 0; river 3 -2 -4 -5; road 7 -4 -2 -5; roast 5 -2 -1 -2;
rode 3 -1 -1 -1; roll -3 5 -5 -14; rolled 0 -1 1 -3; rolls 8 -7 -4 0; roof 2 0 -4 -6; room -1 3 -2 -3;
room> -1 -1 3 -1; roommate 5 -2 -1 -2; roses -1 2 -1 -5; rotten 5 -3 0 -2; rough 7 -6 0 0; roughly 6 -2
-4 -1; round -1 -2 -2 0; round> -1 -11 -1 1; rounds 3 -5 0 0; rounds> 5 -5 -4 -5; routine 9 -6 -1 -2; row
-1 -2 -1 -1; rowed 4 -2 -2 -1; rowing 5 -2 -2 -2; rowing> 8 -7 -7 -2; rt 8 -7 -2 -1; rubber -5 -4 8 0;
rug 6 -2 -2 -2; rugby 2 -1 0 0; run 3 1 -3 -3; run> 5 -1 -1 -3; runn 1 0 0 0; running -3 5 -7 -4; runs
-13 13 -6 -5; rush 1 0 0 0; s 3 -2 0 -1; sad 6 -7 -1 -3; saddle -5 -7 -2 8; said 4 -2 -1 -1; sale 1 0 0
-1; salon 5 -4 -1 0; same 4 -3 -4 -5; same> 4 -4 -5 -3; sang 3 -2 -3 -4; sat -5 0 -3 4; saturday 4 -3 0
0; sauna 1 0 0 -1; saw 1 -4 -8 1; say 1 -1 -2 -1; say> 3 -1 -1 -2; says 1 -3 -4 2; scale 9 -3 -4 -2;
scale> 8 -2 -6 -1; scared 7 -4 0 -2; scary -10 -2 -1 5; schedule 7 -4 -2 -1; school -1 2 2 -2; school> 8
-6 -5 -8; scones -2 -1 3 -3; score 6 -6 0 0; scored -1 0 1 -1; scratch 6 -4 -1 0; screaming 5 -4 -4 0;
screen -5 -6 -5 5; sea -1 0 3 -4; seaside 2 -1 0 0; seat -1 6 -8 -1; seated -4 2 2 -5; seats -3 3 -2 0;
sec -5 5 -6 -3; second 0 -2 -8 3; second> 3 -4 -4 1; seconds -5 -3 -2 7; seconds> 2 -2 -1 -1; secs -5 -3
-2 6; see -7 -3 -6 9; seeing -8 -5 -3 8; seminar 3 -1 0 -2; send 4 -1 -1 -1; sending 5 -2 -1 -1; sent 2
-1 0 0; sentence -5 -3 -3 7; series 3 -4 -3 -3; session 3 -2 -1 -2; session> 4 -3 -6 -2; sessions 3 -1 -1
-1; set 2 1 -5 -9; set> -3 3 -8 -4; sets 6 -2 -2 -1; sets> 3 1 -2 -2; settle -7 5 -5 0; settled 5 -5 -6
-4; seven 3 -1 -1 -2; seven> 7 -3 -4 -3; severe -22 -7 18 4; sewing 3 -13 -3 -1; shake 10 -8 -3 0; shame
1 -1 1 -2; sharp 7 -8 8 -1; sharp> 5 -1 -3 -1; she 4 -4 0 -7; shed -4 -3 11 -3; shedding 4 0 -3 -1; shift
8 -3 -3 -7; shift> 3 -5 -7 -1; shifts 1 -1 0 0; shin -7 -3 7 -8; shin> -3 -1 4 0; shins 7 -1 -4 -2;
shivering -13 13 -7 -10; shock -6 -2 4 -6; shoe 0 -5 5 -2; shoes 5 -2 -9 -2; shooting -18 11 -1 -3;
shoots -7 8 -8 -6; shop 9 -2 -2 -5; shopping -2 0 4 -1; shops 5 -3 -4 -8; short -7 -5 -4 8; short> 7 0 -4
-10; shorter 6 -2 -2 -2; shorter> 6 -3 -2 -4; shortness -9 -3 -3 4; shot 2 -1 -4 -2; should -7 -2 6 -5;
shoulder -1 -3 5 -5; shoulder> 5 -5 -3 -3; shoulders 5 -3 -1 -1; shoulders> 7 -4 -3 -3; shouted 10 -7 -1
-6; shovelled 1 -1 0 0; show 4 -2 -3 -3; showed 5 -5 -2 -3; shower -4 -6 -4 6; shows 4 -6 -2 0; shut 6 -2
-2 -3; si 5 -5 -3 -2; sick 9 -3 -1 -5; sick> 6 -1 -3 -1; side -4 -8 -4 6; side> -2 1 -5 -9; sides 6 -5 -1
-3; sides> 3 -3 -2 0; sight -11 -7 -4 9; sign 4 -3 0 0; signal 6 -2 -3 -1; signed 7 -3 -3 -5; simply 1 0
0 0; since -8 -2 -3 3; since> 1 -4 -7 1; sing 1 0 0 0; singing 5 0 -4 -1; single 6 -1 -2 -2; sink -4 -2
-1 4; sir 6 -7 2 -1; sir> 5 -3 -2 -5; sister 1 -5 1 -5; sit -3 -4 -3 7; sit> -1 4 -3 -8; sits 6 -5 -1 -2;
sitting -5 -10 -2 7; situation 3 -1 -2 0; six 4 -7 -5 -2; six> 5 -5 -5 -6; size -4 -7 5 -4; skin -5 4 -7
2; skip 8 -4 -6 -4; skipd 2 0 -1 -1; skipped 7 -5 -2 -3; skipped> 9 -2 -4 -9; skipping 0 -12 -4 6;
skipping> 8 -10 -13 -7; skips -9 -5 -3 5; slammed -3 -3 3 -2; slay 6 -5 -2 -5; sleep -5 9 -10 -9; sleep>
-3 3 -9 -8; sleeping 0 3 -2 -6; sleeps -11 12 -9 -8; slept 5 1 -4 -7; slight 4 -3 -5 -5; slip 9 -3 -3 -9;
slipped 1 -8 5 -7; slipper -3 -8 3 -5; slot 7 -8 -7 -6; slow 5 -4 -2 -2; slowly 5 -6 -4 -4; slurred -16
-4 -5 15; slurred> -7 -4 -3 11; small 5 -4 -5 -5; smell 6 -5 -2 0; smells 5 -4 -3 -2; smiling 6 -4 0 -1;
smoke 5 -2 0 -4; smth -4 -1 4 0; smug 7 -4 0 -6; snap -14 -9 16 -3; snapped -11 -7 13 -4; snow 4 -1 -2
-1; snowed 3 -2 -1 -1; snowing 4 -2 -1 0; so 2 -2 -1 -3; so> 2 3 -9 -8; soaked 8 -4 -4 -8; sock 0 2 -5
-16; socks 4 -2 -1 -4; sofa 3 -2 0 0; sole -4 9 -1 -10; sole> -1 6 -1 -6; soles -3 3 -3 -3; solid 6 -5 -1
-1; some 2 -1 -5 -4; somebody -5 -6 -3 6; someone -10 1 6 1; something -7 -8 8 -2; somewhere 5 -2 0 -3;
son 7 -4 -3 -5; song 3 -1 -2 -3; sore 6 0 -5 -4; sore> 7 -5 -3 -2; soreness 5 -5 -3 -3; sorry 4 -3 -1 -1;
sorry> 4 -1 -2 -1; sorted 3 -2 -3 -2; sound -11 -10 12 -2; soup -6 6 -3 -1; space 5 -1 -3 -1; spare 4 -3
-2 0; speak -10 -6 -3 9; special -3 4 2 -2; speech -10 -5 -5 12; speech> -6 -1 -1 7; spent 2 1 0 -2; spin
5 -2 -1 -2; spinning -10 8 -2 -4; split 2 -1 0 -1; splits 4 -3 -3 -2; spot 2 -1 0 0; spreadsheets 11 -6
-12 -6; spring 0 0 1 0; squat 0 1 -4 -2; squats 0 2 -2 -2; squats> 0 1 -2 -1; squeezed 9 -7 -1 -6;
squeezing -4 -3 -5 6; stabbing 3 -15 6 2; staff 4 0 -1 -3; stage 5 -1 0 -4; stairs -11 -2 2 1; stairs> -2
-2 -1 -15; stamp 7 -6 -7 -6; stand -6 -10 11 -6; standing -8 9 -5 -2; stared 2 -1 0 -1; staring -2 -2 2
-1; start 5 -3 0 -1; started 2 -9 -3 2; started> 11 -3 -5 -8; starting 4 -2 -1 -2; starts -1 2 0 0; state
6 -4 -1 -6; static -6 7 -8 -3; station 8 -1 -4 -4; stay -4 7 -3 -7; stayed 2 -1 0 -1; staying 10 -9 -3
-1; stays -7 5 -5 2; step -13 -10 11 3; steps -1 -5 -7 3; stiff 9 -7 -1 -2; stiff> 3 -1 -1 -2; stiffness
8 -7 -1 -1; still -7 6 -4 0; still> 4 -8 -4 5; stinking 11 -2 -5 -5; stomach 10 -6 -3 -12; stone -2 0 -4
-2; stood -3 2 -3 1; stop -1 1 -3 -5; stop> -2 4 1 -3; stopped -2 1 -2 -3; stopped> 0 1 -1 -5; stopping 0
6 -6 -2; stops -1 -4 -9 3; storm 8 -5 -3 -1; story 5 0 0 -4; stove 3 -7 -4 -1; straight 6 -2 -4 -8; strap
3 -1 -1 -1; strap> 10 -5 -3 -3; streak 4 -1 -2 -1; streaming 5 -14 -4 -4; streched 3 -2 -1 -2; street 2
-3 1 -1; strength -17 10 -7 0; stress 7 -3 -4 -6; stretch 1 1 -1 -3; stretch> 0 2 -6 -4; stretched 7 -7
-3 -1; stretches 0 -1 0 -1; stretches> 7 -2 -3 -3; stretching 4 -4 -1 -1; stretching> 3 0 -3 -1; strike 1
0 0 0; string 3 -3 -1 -4; strings 1 0 0 0; strong 5 -18 7 0; stuck 7 -3 0 -3; stuff 5 -4 -1 -4; stupid 1
0 0 0; such -5 -4 3 1; sudden -9 -19 -4 20; sudden> -1 -3 0 3; suddenly -4 -23 -6 16; suddenly> 3 -5 -4
1; sugar -2 0 -1 2; sun 4 -3 -1 -4; sunday -1 3 -3 -2; sunday> 3 0 -3 -3; sunny 2 0 -2 0; sunrise 4 -3 -2
-3; sunset 3 -1 -4 -2; super 1 1 -1 -3; supermarket 3 0 -5 0; supper 4 -4 -2 0; sure 1 -4 -1 -1; sure> 10
-4 -5 -11; surgery 7 -6 -6 -7; swallowed 4 -2 -1 -1; swam 1 1 -1 -3; swamped 8 -7 -2 -8; swear 8 -5 -10
-11; sweat -1 -5 -4 3; sweat> -2 -3 -1 2; sweating -10 -5 -2 8; sweating> -6 -6 -3 6; sweaty 3 -2 -3 -2;
swell -4 -8 5 -6; swelled -16 -8 17 -5; swelling -19 -14 20 -9; swim -1 -3 0 1; swimming -4 -7 -1 1;
switch 6 -3 -3 -3; swole -9 -5 9 -2; swollen -21 -6 23 -3; swollen> -6 -2 6 -1; table 5 -9 -7 4; tablets
4 -2 -9 -6; take 2 -7 4 -7; taking 0 -4 4 -8; talk -2 -3 -3 2; talked 1 0 0 0; talks 1 -1 0 0; tapped 4 0
-3 -7; target 2 -2 0 0; targets 3 -2 0 -1; taught 1 0 0 0; tax 2 -1 0 -1; tbh 6 -2 -2 -2; tbh> 6 -4 -4
-2; tea 0 0 -2 -3; tea> 3 -3 -3 2; teacher 7 -3 -2 -2; teacher> 3 0 -1 -1; team 6 -3 1 -3; teeth 4 0 0
-3; teething 6 -8 -2 1; telephone 6 -6 -3 -7; tell -5 5 -1 3; telly -3 5 -6 -2; temp -10 9 -4 -2;
temperature -4 7 -3 -3; ten -1 1 -5 -3; ten> 1 2 -2 -6; tender 8 -4 -6 -2; tender> 4 -2 -3 -2; tennis 3 0
0 -2; tent 5 -2 -2 -1; terrace 8 -5 -8 -5; terrible -2 1 -3 1; test 5 -1 0 -4; texting 3 -3 -2 -2; th 4
-2 -2 -1; th> 2 -1 -1 0; than -1 1 3 -2; thank 9 -12 -1 -5; thanks 5 -2 -1 -1; thanks> 7 -2 -3 -2; that
-2 -3 -2 1; that> 3 -7 0 2; the -1 0 -1 1; the> 5 -5 -6 -3; theatre -5 9 -2 -3; them 4 -1 0 -4; them> 5
-3 0 -3; then -1 -4 0 0; then> 3 -10 -1 -12; there -1 -1 -2 1; there> -1 2 -4 1; these 3 2 -3 -7; these>
4 -3 -1 -2; they -2 1 -4 -3; thick -9 -4 8 -4; thigh -8 -5 4 -6; thigh> -2 5 1 -13; thighs 0 -2 -3 3;
thighs> 4 -3 0 -2; thing -1 4 -6 -3; thing> 10 -5 -1 -8; things -2 3 -2 0; think -5 -6 3 2; think> 2 -6 1
-7; thinking 2 -2 0 0; thinners 3 0 -3 0; third 3 -2 -4 -1; thirds 5 -2 -1 -1; thirds> 7 -3 -2 -3; thirty
5 -2 -5 -6; this -2 -2 0 1; this> 3 3 -2 -2; those 5 -3 -2 -3; those> 3 0 0 -2; though -1 -4 4 -3;
though> 2 -2 -1 -1; thought -2 -4 -1 3; thread -1 -1 3 -1; three 4 2 -1 -5; three> 8 -4 -4 -1; threw 5 -5
-2 -2; throbbing -17 -5 18 -7; throbbing> -5 -2 6 0; throbs -13 -8 14 -6; through 4 -4 -3 -4; throwing 7
-6 -6 -12; thumb -6 8 -3 -9; thursday 5 -3 -1 -3; thursday> 5 0 -4 -4; ti 3 -1 -1 -1; tight 5 -8 -2 2;
tight> 4 -1 -2 -2; tightness 5 -2 -1 -2; tiles -2 -9 -6 8; till 0 2 -1 -4; time 5 0 -3 -4; time> 2 2 -4
-4; times -4 2 0 -1; times> -3 4 -4 -2; timing 2 -1 0 0; tingle -14 14 -6 -5; tingled -9 10 -7 -4;
tingles -16 13 -11 -6; tingles> -7 6 -4 -4; tingling -23 19 -8 0; tingling> -6 7 -7 -6; tingly -15 16 -7
-7; tiny -4 -4 1 -2; tired -2 -4 -3 4; tired> 2 0 -4 -10; tissues 4 -2 -1 -2; to 2 -2 -1 -2; toast 4 -3
-7 -4; today 4 -5 -1 0; today> 6 -4 -2 -5; todays 0 -4 -2 0; toddler 1 0 -4 -4; toe 0 5 -6 -8; toe> -6 6
-3 -6; toes -12 16 -6 -11; toes> -3 4 -3 -6; together -1 6 -2 -5; toilet -4 -11 -6 4; told 11 -9 -2 -2;
tomatoes -2 3 1 -3; tomorrow 4 -2 -1 -1; tomorrow> 4 -3 -2 1; tongue -1 -16 -7 6; tonight 2 -7 1 -3;
tonight> 6 -1 -3 -2; tonite 4 -1 -1 -1; tonite> 3 -1 -1 -1; too 2 -2 -3 2; too> 3 -5 0 5; took 0 -5 2 -1;
tooth 5 -4 -3 -1; total 3 -1 -1 -1; totally 3 -1 -2 0; touch 6 -13 1 -1; touch> -8 0 8 -1; touched 4 -2 0
-2; touching 8 -8 -3 -4; tough 8 -5 -2 -4; tough> 5 -1 -2 -4; tour 9 -5 -6 -3; tow -8 8 -7 -6; towel 5 -3
-1 0; town 6 -5 0 0; track 6 -8 -1 -10; tractor 1 0 0 -3; traffic 4 -2 -1 -2; train 5 -2 -2 -1; trained
-1 -4 2 -11; training 6 -5 -5 0; training> 1 4 -3 -6; trains 2 -2 -2 0; tram -3 3 3 0; travel 6 0 -4 -2;
travelling 6 -2 -1 -3; travelling> 5 -1 -2 -1; tree 1 4 -4 -3; tried 3 -3 -4 2; trip -1 6 -2 -3; trouble
-7 -9 -4 10; trousers 0 2 -3 -2; truck 4 -3 -1 0; trumpet 6 -2 -3 -3; try 9 -7 -1 -2; trying -8 12 -2 -6;
tuesday -1 0 -3 0; tuesday> -5 2 -4 4; tulips 2 -2 1 0; tummy 12 -5 -4 -8; turn -3 -8 4 0; turned -3 0 0
-2; turning -6 6 0 0; tv 4 -2 -1 -1; twang -6 -5 6 -5; twelve 5 -2 -1 -1; twenty 5 -1 -1 -3; twice -6 1 6
0; twice> 7 -9 -8 -4; twig -5 0 6 0; twins 6 -3 -1 -5; twist -2 1 -4 -1; twisted -3 -8 3 -1; two 0 1 -4
0; two> 11 -7 -2 -4; type -1 2 -5 -3; typical 6 0 -2 -4; typing 1 -4 -4 0; typo 1 0 0 0; tyre 10 -9 -4
-3; ugh 3 -1 -1 -1; ugh> 3 -2 -2 -1; um 4 -3 -1 -1; unannounced 3 0 -2 0; unbearable -18 -8 16 -11; uncle
3 -1 0 -2; under -7 -4 11 -9; understand 3 -2 -3 -2; uni 4 0 -1 -3; unreal 7 -4 -8 -3; unsubscribe 4 -4
-5 -4; until 1 3 -3 -2; up -3 0 4 -1; up> 4 -1 -4 1; update 6 0 -1 -5; upper 6 -1 -1 -5; upset 3 -2 -2
-3; upstairs 7 -4 -4 -3; urine -13 -5 -7 9; urine> -2 -2 -1 3; us 1 0 -1 0; used 8 -7 -3 -8; usual 3 0 -2
-3; v 3 -1 -2 0; van 5 1 -1 -4; version 8 -4 -3 -7; version> 7 -2 -3 -6; very -1 -2 -3 1; vet 10 0 -10
-2; video 4 -3 -2 -8; video> 4 -2 -1 -1; view 5 -4 0 -5; village 0 -1 -1 2; violin 3 -2 -2 0; vision -5
-7 -6 7; vision> -8 -1 -2 8; visit 6 -2 0 -5; visit> 4 -2 -1 -4; visited 3 -2 -1 0; visiting -2 -1 -1 3;
visitors 13 -3 -2 -9; visitors> 1 0 -1 0; visits 5 0 -3 -7; voice 4 -3 -3 -7; waist 9 -5 -2 -3; wait 6 -2
-3 -1; waited 0 -10 7 -1; waiting 3 -6 2 -7; wake -9 8 -8 3; wakes -20 22 -5 -7; waking -9 10 -7 -6; walk
-10 0 7 -6; walk> -10 4 3 -12; walked -1 0 3 -1; walking -9 7 2 3; wall 0 6 -6 -3; want 3 -4 -3 -2;
wanted 2 2 2 -5; wants 5 -5 -2 -1; ward 4 -3 2 -4; warm -6 -12 13 -4; warm> -4 0 5 0; was 2 -2 0 -3; was>
3 -2 -4 -3; washed 1 4 -8 -8; washing 7 -3 2 -10; watch 6 -3 -5 -4; watched 1 -1 -1 -2; watching 3 -4 -1
1; water -3 -2 1 1; way -12 -5 10 -4; way> 1 -12 0 -2; we 4 -1 0 -4; weak -25 14 -11 -3; weak> -14 -2 -7
5; weaker -10 11 -10 -7; weakness -23 12 -12 1; weakness> -15 4 -8 0; weather 5 2 -8 -8; wedding 9 -4 1
-12; wednesday 4 -2 -1 -2; wee -9 -4 -9 7; weeding 6 -2 -2 -3; week 1 4 -3 -9; week> 8 -6 -2 -1; weekdays
3 -6 -3 -3; weekend -1 -1 -3 2; weekend> -1 0 2 -3; weeks 3 3 -3 -7; weeks> 4 -2 -1 -1; weight -12 -1 13
-6; weight> -3 -5 3 -4; weird -3 5 -9 -4; weird> -3 -2 -3 3; well -3 3 -3 -4; well> 8 -9 1 -11; went -5 1
-3 5; were -2 0 -1 -2; wet -6 -5 -5 8; what 3 3 -3 -11; whatever -12 11 -4 -5; when -7 3 -3 -1; whenever
-5 5 -3 -1; where 5 -7 -1 2; which 7 -5 -5 -2; whichever -8 4 -3 -2; while -5 3 0 0; whistle 7 -3 -4 -7;
who 4 -2 -2 -2; whole -5 6 -4 3; why -1 3 -5 -5; wife -4 -7 -7 7; wifi 5 -5 0 -2; wild 1 0 0 0; will -1 0
0 -6; wind 0 1 -5 -2; window -1 -2 -1 4; windows -7 7 -7 -2; wine 8 -6 -1 0; wipe -10 -12 -2 14; wire -2
3 -3 -3; wise 8 -3 -1 -4; wish 3 -1 -2 -1; with 1 1 -2 -2; with> -2 3 -7 -9; without -9 7 -5 2; wk 3 1 -6
-2; woke -9 10 -5 2; woke> 12 -4 -10 -8; woken -12 12 -5 -3; won 2 -1 2 -2; wonder -9 -2 5 0; wonderful
-2 2 -4 0; woohoo 4 -2 -1 -3; wool -7 2 -5 3; woozy -16 12 -5 -8; word 6 -2 -3 0; words -14 -3 -3 14;
words> 5 -4 -3 0; wore 6 -4 -1 -2; work 5 -1 -2 -2; work> 5 -1 -1 -3; worked 3 -2 -1 -1; working 6 -3 -1
-2; works 4 -2 -1 -1; works> 7 -6 -3 -3; worried 0 -3 -2 1; worry 2 2 -8 1; worse 2 1 -5 -8; worse> 5 -4
-2 -2; worst -6 -13 8 -9; worth 5 -3 -4 -1; would 3 -2 -4 -2; wrist 2 -3 3 -5; wrist> 3 -1 0 -1; wrists 4
-1 -2 -1; write -2 -2 -3 3; writing 2 -1 1 -3; written 4 -4 -6 -4; wrong -6 -2 -1 8; wrote 3 -1 0 -2; x 4
-2 -1 -1; x> 5 -2 -2 -2; xx 8 -2 -3 -5; yawn 3 -2 -1 0; yeah 5 -4 -4 -3; year 2 2 -7 -2; years 5 -5 -4
-6; yellow 0 -8 4 -3; yep 2 -4 -3 -2; yep> 7 -4 -5 -7; yes 6 -5 -2 -2; yes> 10 -9 -3 -3; yesterday -3 -3
1 -3; yesterday> -1 0 -5 -5; yet 7 -3 -1 -2; yet> 9 -1 -3 -5; yoga 9 -9 -1 -2; you 4 -3 -2 -2; you> 4 -1
-3 -1; young 5 -4 0 -3; your 5 -1 -1 -3; yours 6 -4 -2 -2; yours> 5 -2 -3 -3; yup 7 -3 -2 -6; yup> 4 -2
-3 -1; zap -5 6 -5 -4; zero 7 -7 -2 -3; zilch 4 -4 -4 -4; zoo -2 1 1 0; zoom 6 -3 -2 -1; → 7 -4 -1 -3; ⏰
2 -1 0 0; ⏰> 1 0 0 0; ☀ 4 -1 -1 -2; ☀> 4 -1 -1 -2; ☑ 5 -4 -9 -5; ☕ 7 -4 -3 -4; ☕> 5 -4 -3 -4; ♀ 4 -3 -3
-3; ♀> 4 -3 -3 -3; ✅ 4 -2 -1 -2; ✅> 4 -3 -3 -3; ✌ -4 5 -2 -2; ✌> 8 -7 -4 -4; ✔ 4 -2 -1 -1; ✔> 5 -2 -2 -2;
❌ 5 -3 -3 -3; ❌> 6 -4 -4 -4; ❤ 4 -3 -3 -3; ❤> 4 -3 -3 -3; ➡ 4 -2 0 -1; 🌙 4 -1 -1 -1; 🌙> 4 -1 -1 -1; 🌞 8
-6 -6 -6; 🌧 6 -3 -7 -7; 🍮 3 -2 -1 0; 🎉 4 -1 -1 -1; 🎉> 5 -2 -1 -2; 🎻 3 -1 -1 -1; 🏃 2 0 0 -1; 🏃> 2 -1 0 -2;
🏖 5 -1 -2 -3; 🏖> 2 -1 0 0; 🏼 3 -1 -1 -1; 🏼> 4 -1 -1 -2; 🏽 3 -1 -1 -1; 🏽> 4 -2 -2 -2; 🐶 4 -4 -3 -3; 👋 7 -2
-2 -3; 👋> 7 -2 -2 -2; 👌 4 -4 -3 -4; 👌> 4 -4 -3 -4; 👍 7 -3 -2 -2; 👍> 5 -2 -2 -2; 👎 6 -3 -3 -3; 👎> 6 -4 -3
-4; 💀 1 -6 -3 -1; 💀> 1 -4 -4 0; 💃 4 -1 -1 -2; 💃> 4 -2 -1 -2; 💪 5 -3 -2 -2; 💪> 6 -2 -2 -3; 💫 -3 2 -1 2; 💫>
-3 2 -1 2; 💯 4 -4 -4 -4; 💯> 4 -4 -4 -4; 🔥 5 -3 -3 -4; 🔥> 3 -3 -3 -3; 😂 7 -4 -2 -1; 😂> 6 -3 -1 -2; 😄 4 -2
-2 -3; 😄> 4 -2 -2 -3; 😅 5 -2 -1 -1; 😅> 5 -2 -1 -1; 😊 5 -2 -2 -2; 😊> 6 -2 -2 -2; 😎 4 -3 -3 -3; 😎> 3 -3 -3
-3; 😐 -1 2 -2 -1; 😕 4 1 -2 -4; 😕> 4 2 -2 -4; 😖 6 -3 -2 -1; 😖> 6 -3 -3 -1; 😟 -7 4 -1 1; 😟> -3 4 0 -2; 😢 7
-5 -6 -3; 😢> 7 -5 -6 -3; 😣 8 -3 -6 0; 😣> 5 -3 -2 0; 😨 -3 0 0 3; 😨> -3 0 0 3; 😩 4 -2 -3 -1; 😩> 4 -2 -3 -1;
😫 4 -2 0 -1; 😫> 4 -2 0 -1; 😬 1 -1 -1 -2; 😬> 0 -1 -1 -2; 😭 2 -3 -1 -1; 😭> 5 -3 -1 -4; 😮 6 -4 -5 -6; 😰 -2
-2 2 2; 😰> -2 -2 2 2; 😱 -1 0 1 0; 😱> -1 0 1 0; 😳 -4 1 1 2; 😳> -4 1 0 2; 😴 4 -2 -2 -3; 😴> 4 -3 -3 -3; 😵 -1
0 -3 3; 😵> -2 0 -3 2; 🙂 3 -3 -3 -3; 🙂> 3 -3 -3 -3; 🙃 4 -2 -2 -1; 🙃> 4 -2 -2 -1; 🙄 2 0 -1 -1; 🙈 4 -1 -1
-2; 🙈> 4 -1 -1 -2; 🙌 5 -2 -1 -1; 🙌> 5 -3 -2 -2; 🙏 5 -2 -1 -2; 🙏> 5 -2 -1 -2; 🤒 3 -1 -1 -1; 🤒> 2 -1 -1 -1;
🤔 6 -3 -3 -4; 🤔> 6 -3 -3 -4; 🤞 2 -1 -1 -1; 🤞> 2 -1 -1 -1; 🤣 6 -5 -4 -7; 🤦 2 -1 -1 0; 🤦> 4 -2 -2 -1; 🤧 3
-3 -3 -2; 🤷 5 -3 -3 -3; 🤷> 5 -3 -2 -3; 🥱 6 -1 -1 -5; 🥲 4 -2 -2 0; 🥲> 5 -2 -2 -1; 🥳 6 -3 -3 -3; 🥳> 6 -3 -3
-3; 🥴 3 -3 -4 -3; 🥵 2 -1 -1 -1; 🥵> 3 -1 -1 -1; 🦵 6 -6 -1 0; 🧘 7 -6 -6 -6
"""
"""Each entry: a word of at least three replies ("<" first, ">" last, "#" a number, "_" every reply), and its weights in
the order of `suspicion.LEVELS`; 5 is one natural logarithm of the odds."""
