"""Which words usually go with which warning sign. Written by `python -m tests.bench.doubting`, not by hand."""

WEIGHTS = """
! 7 -5 -3 -3; !> 4 -1 -2 -2; # 5 -1 -2 -3; #> 3 -1 -2 -4; % 7 -4 -2 -1; %> 4 -1 -2 -1; & 1 -5 4 -6; ( 3
-2 0 -1; ) 5 -4 -1 -1; )> 2 -1 -1 -1; + 6 -5 -3 -4; , 1 -1 0 -1; ,> 8 -6 -4 -7; - 7 -4 -1 -1; . 2 -1 -2
-1; .> 4 -2 -1 -4; / 6 0 -3 -3; 3 -5 5 -3 -2; 5:45 7 -6 -1 -2; 6 1 0 0 -1; 6:30 4 -5 -3 -4; 6:45 2 -1 0
-1; 7:30 6 -3 -1 -3; : 6 -3 -2 -2; :> 4 -1 -1 -1; <! 7 -6 -2 -1; <# 1 -4 0 -8; <, 9 -3 -7 -5; <- 2 -1 0
0; <. 10 -7 -3 -6; <: 5 -2 -2 -2; <? 8 -3 -3 -1; <a 3 -10 -3 -2; <about 8 -7 -4 -6; <aching 5 -3 0 -3;
<achy 6 -7 -2 -2; <affirmative 7 -2 -3 -6; <after 1 -6 -6 -1; <again 6 -7 -9 -4; <all 5 -4 -5 -3; <almost
3 -6 -3 4; <already 4 -10 -9 -2; <alright 4 -4 -4 -4; <am 5 -7 -4 -3; <and 9 -8 -3 -6; <ankle -5 -6 5 -4;
<ants 0 5 -4 -5; <anymore 5 -4 -4 -4; <arm 0 3 -4 -13; <as 6 -6 0 0; <at 2 -1 -5 -7; <aye 4 -4 -5 -4;
<baby 6 -4 -2 0; <back 4 -1 -1 -5; <bar 2 -1 -1 0; <became 4 -8 -9 -6; <because 3 -2 -6 -4; <been 11 -10
-3 -8; <before 5 -2 -5 -8; <bet 4 -3 -4 -3; <better 4 -1 -1 -1; <between 3 -5 0 -3; <big -3 -4 3 -1; <bit
3 -1 -1 -5; <bits 8 -4 -7 -8; <black -12 -3 6 -4; <blacked -6 -4 -3 4; <bladder -3 -3 -3 4; <blurred -6
-4 -2 7; <body 4 -1 0 -2; <bonjour 2 -2 -1 0; <boss 3 -2 -4 -1; <both -2 2 1 -2; <breathtaking 2 -2 -1
-2; <bro 1 -3 -2 -1; <broke 5 -5 -6 -3; <bruh 5 -5 -4 -3; <bruise -4 -2 4 -1; <bruised -7 -6 7 -4;
<burned 2 -1 -1 0; <burning -14 7 -6 1; <bus 1 -1 0 0; <busy 4 -2 -2 -2; <but 8 -5 -9 -2; <buttock 6 -6 0
2; <by 5 -3 -2 -2; <calf -3 -6 4 -2; <calves 7 -5 -1 -4; <can -4 1 -1 -2; <cancel 4 -4 -4 -4; <cba 3 -1
-2 -1; <change 3 -2 -1 -1; <chest -1 -5 -4 3; <coach -2 -4 0 -1; <complete 9 -7 -2 -1; <completed 8 -4 -2
-5; <could 2 1 2 -5; <covid 8 -4 -2 -6; <day 3 -1 -2 0; <dead 10 -15 -2 -1; <dear 6 -4 -3 -1; <did 6 -4
-1 0; <dizzy -8 8 -1 -2; <do 2 -3 -2 -2; <doctor -2 -9 0 3; <dog 7 -2 -10 -3; <doing 7 -4 -6 -2; <doms 4
-1 -3 -3; <done 3 -2 -3 0; <double -3 -2 -4 3; <down 11 -8 -4 -4; <dropped 2 -7 0 -7; <dull 6 -4 -2 -1;
<dun 5 -4 -3 -4; <during 3 -5 -2 -9; <dying 1 0 0 0; <easy 5 -1 -2 -2; <effort 4 -3 -2 -1; <electric -5 6
-6 -2; <ever -4 -1 -6 3; <every 8 -7 -2 -3; <everything 0 -1 -5 -3; <exam 5 -4 0 -1; <except 5 -3 -2 -5;
<exercise 4 -2 -3 -3; <exercises 4 -1 -2 0; <face -7 -3 -5 7; <fainted -8 -4 -2 9; <feel 5 -8 -1 6;
<feeling 2 1 0 -6; <felt 3 -3 2 -9; <fever -8 -2 3 -6; <feverish -8 7 -3 -4; <finally 1 -1 0 0; <fine 7
-3 -1 -2; <fingers -13 12 -5 -4; <finish -1 -4 -2 0; <finished 4 -4 -4 -2; <finito 6 -4 -4 -4; <first 6
-5 -4 -5; <flu 4 -3 -2 -2; <food 6 -2 0 -4; <foot 1 0 -6 -6; <for 8 -3 -2 -3; <forgot 4 -2 -2 -1; <fr 5
-3 -2 -1; <from 6 -3 -3 -11; <gave 10 -2 -9 -2; <get 2 -2 -2 -3; <going 11 -2 -3 -9; <gone 7 -6 -5 -8;
<good 4 -2 0 -2; <got 2 -4 -3 -7; <groin 1 -13 -5 1; <guests 3 0 -1 -2; <guten 3 -1 -2 -2; <had 3 -1 -3
-5; <haha 3 -3 -3 -6; <half 7 -10 -6 -2; <halfway 7 -8 -5 -2; <hamstring -1 -10 5 -6; <hamstrings 6 -5 -1
0; <hand -6 5 0 -3; <hardly -1 -8 4 -7; <has 3 -5 -1 -6; <have 2 -6 -4 -3; <having 3 -4 -8 3; <head -3 2
-8 1; <health 1 0 -1 -1; <heard -3 -1 3 0; <heart -3 -7 -4 5; <heavy 2 -3 -1 -2; <hecho 1 0 0 0; <held 4
-3 0 -1; <hello 0 0 -5 -1; <here 6 -1 -5 -1; <hey 5 -1 -1 -4; <hi 4 -3 -6 -2; <hip 3 -3 -2 -5; <hips 7 -6
-2 -2; <honestly 1 0 -1 0; <hot 10 -13 0 -2; <how 13 -7 -4 -3; <hurts 4 -3 -8 -4; <i 1 -3 -2 -1; <ich 3
-1 -1 -1; <idk 4 -4 -4 -4; <ill 6 -1 -3 -2; <in 9 0 -5 -15; <inbox 4 -3 -2 -2; <is -5 -2 3 -7; <it 4 -4
-5 -8; <ja 4 -3 -1 -1; <jaw -14 -7 -8 13; <just 1 2 1 -5; <k 3 -3 -3 -3; <kid 4 -3 -1 -1; <kinda 8 -1 -3
-3; <kindly 7 -3 -2 -3; <knee 5 -5 -3 -6; <knees 9 -9 -3 -3; <l 4 -3 -4 -1; <last 1 0 -7 -3; <late 3 -2
-1 0; <later 8 -4 -3 -2; <left 3 -10 -3 -1; <leg 2 -2 -1 -8; <legs 1 5 -4 -14; <less 3 -1 -1 0; <light
-10 5 -3 -3; <lighter 7 -3 -7 -1; <like -7 4 -2 -2; <little 0 1 -1 0; <lol 7 -6 -5 -2; <long -1 1 -1 0;
<lost -1 -1 -7 0; <lots 1 -1 0 0; <lovely 0 -3 1 -5; <lowkey 2 -1 0 -1; <made 5 -1 -3 -2; <managed 8 -2
-2 -6; <mat 8 -1 -5 -2; <maybe 2 0 -8 -12; <me 10 -10 -10 -5; <might 3 -3 -3 -2; <migraine 7 -2 -2 -4;
<missed 4 -1 -1 -1; <more 7 -3 -2 -2; <morning 4 -5 0 -4; <most 6 -2 -2 -2; <move 5 -5 -4 -2; <mum 6 -4
-4 -3; <muscle 2 0 -1 0; <must 9 -4 -8 -8; <my 0 -3 -5 3; <nah 4 -3 -3 -3; <nearly 4 -7 -7 -2; <neck 4 -2
-1 -2; <neighbour 8 -2 -4 -4; <new -4 -1 -1 2; <next 3 -1 0 -3; <ngl 4 -2 -1 -2; <nice 3 -2 -2 -2; <night
-9 12 -3 -4; <no 2 -3 -1 -5; <none 10 -9 -2 -2; <nope 6 -5 -2 -5; <not 12 -9 -4 -6; <nothing 7 -1 -1 -5;
<notice -4 5 -3 -4; <noticed -4 4 -1 -7; <now 5 -4 -7 -6; <numb -8 0 -8 6; <numbness -10 7 -8 -1; <of 8
-7 -9 -4; <ok 7 -6 -2 -2; <okay 5 -4 -1 -2; <omg 5 -5 2 -2; <on 6 -9 -4 3; <one -3 -7 2 0; <only 11 -7 -6
-5; <or 2 -2 -2 1; <ouch 5 -3 -3 -3; <oui 3 -3 -3 -2; <our 5 -3 -2 0; <out 5 -5 -3 -4; <outer -2 9 -6 -1;
<overslept 6 -2 -3 -1; <pain 4 -1 -5 -1; <palpitations -4 -9 -2 8; <part 8 -2 -6 -3; <partly 8 -3 -3 -3;
<passed -6 -3 -5 5; <pause 6 -3 -2 -1; <phone 4 -3 0 -2; <physio 3 -3 -2 -4; <pins 1 1 -4 -2; <played 1
-5 2 -4; <please 5 -2 -2 -2; <popped -6 -7 8 -3; <pose 3 -2 -1 0; <power 8 -2 -1 -6; <pressure -3 -5 -2
5; <pretty 3 -1 -1 -2; <probably 3 -3 -3 -3; <pulled -1 -7 2 -11; <put 3 -5 -3 -3; <quick 2 0 -2 0; <quit
3 -2 -2 -2; <qx 3 -9 -4 -4; <r 4 -4 -3 -1; <ran 5 -3 -1 -1; <reached 7 -7 -1 0; <really -4 -12 -6 7;
<rest 3 -1 -1 -1; <right -6 -6 -1 4; <room -7 7 -7 -9; <routine -1 -3 0 5; <said 7 -5 -3 -2; <same 7 -5
-1 -1; <saw 1 -8 -9 3; <session 6 -4 -1 -4; <set 8 -7 -4 -2; <severe -6 -4 3 1; <sharp 3 -8 8 -3;
<shooting -6 5 -5 -4; <shorter 6 -3 -3 -2; <shot 6 -3 -2 -2; <should 11 1 -5 -9; <shoulder -5 -2 6 -3;
<show 5 -3 -2 0; <si 6 -5 -4 -3; <sick 3 -3 0 0; <since 0 -2 -6 -1; <sir 5 -5 0 -2; <skipped 5 -3 -2 -4;
<slept 16 -15 0 0; <slight 5 -4 -6 -5; <slipped -2 0 2 -2; <slurred -4 -4 -1 8; <so 2 -6 -3 0; <some 9
-16 4 -2; <something -1 -9 2 -2; <sore 6 -4 -2 -1; <soreness 3 -5 3 -4; <sorry 5 0 -1 -3; <sorted 3 -3 -2
-3; <speech 1 -1 -2 -1; <squeezing -2 -2 -2 3; <started 10 -5 -1 -5; <stiff 4 -1 -1 -1; <stiffness 1 0 -1
0; <still 7 -5 -3 -11; <stomach 3 -2 -3 -1; <stop 13 -8 -5 -3; <stopped 6 -10 -2 -1; <stretch 1 -1 0 0;
<sudden -4 -9 -5 8; <suddenly 2 -4 -1 -1; <swamped 1 -1 0 0; <swollen -5 -1 7 -1; <take 3 -2 -3 -1;
<teacher 8 -2 -4 -6; <tender 5 -4 -4 -1; <thank 5 -1 -1 -3; <thanks 7 -3 -2 -2; <that 9 -2 -1 -6; <the 2
-5 -2 -4; <there -1 1 0 -5; <thigh -7 -9 14 -2; <thing 8 -8 -6 -3; <this 4 1 -6 -7; <thought 6 -1 -3 -4;
<thread 1 0 0 0; <three 4 -2 -1 -2; <threw 8 -6 -6 -3; <throbbing -5 -4 3 -2; <tight 1 -2 -2 3;
<tightness 3 -1 -1 0; <tingling -10 0 -4 3; <tingly -3 8 -4 -3; <to 0 1 -2 -3; <today 11 -9 -3 -6; <toes
-4 4 -2 -3; <tomorrow 7 -2 -2 -4; <too 2 -6 2 -8; <took 10 -2 -6 -3; <travelling 5 -1 -2 -1; <tried 8 0
-6 0; <twice 8 -2 -4 -4; <two 4 -3 -1 -3; <unbearable -8 -7 8 -5; <unsubscribe 4 -4 -5 -4; <up -1 2 -6
-3; <very 5 -3 -1 -1; <wakes -3 4 -4 -2; <walked 4 -3 -2 -2; <want 2 -2 -1 1; <was 4 -9 -4 0; <watched 4
-3 -2 -3; <way 10 -8 -9 -7; <we 4 -2 -1 -1; <weak -2 7 -5 -7; <weakness -10 7 -5 -5; <week 2 -1 -1 0;
<weight 0 2 -11 -5; <well 7 -6 -2 -3; <went 2 5 -1 -13; <wet -11 -3 -3 5; <what -3 -4 2 -5; <when 3 1 -4
-7; <where 5 0 0 -5; <which 5 -7 -4 -2; <while 6 -4 -5 -6; <who 7 -4 -5 -4; <whole 3 -4 -4 -1; <why 10 -8
-6 -4; <wife 2 0 0 -2; <wifi 3 -3 0 -2; <will 7 -2 -5 -1; <with -1 -4 -1 -3; <woke 1 2 -14 -8; <words -2
0 -2 3; <work 5 -3 -2 -1; <worse 9 -9 -5 -2; <xx 3 -1 -2 1; <yeah 6 -5 -4 -3; <yep 2 -6 -5 -2; <yes 4 -3
-2 -2; <yesterday 3 -3 0 -2; <you 2 -3 -2 2; <yup 8 -4 -2 -7; <zero 1 0 -1 0; <zilch 5 -4 -5 -4; <✅ 5 -4
-3 -5; <❌ 5 -3 -3 -3; <👌 3 -3 -3 -3; <👍 6 -2 -3 -2; <👎 5 -3 -3 -3; <💪 5 -4 -4 -3; <🔥 3 -3 -3 -3; <😴 3 -3
-3 -3; <🤒 5 -1 -3 -2; <🤷 5 -4 -4 -3; = 4 -2 -1 -1; ? 3 -2 -2 -6; ?> 2 -1 -3 -6; _ 12 -5 -4 -4; a -3 -1 -1
-2; a> -8 5 -8 0; ability 9 -2 -6 -3; able 1 -7 -1 3; about 4 -3 -5 0; about> -1 -2 -3 3; abs 2 -2 -1 -1;
accident -7 -5 -6 7; ache 1 0 -8 -4; aches 7 -2 -8 -2; achey 9 -9 -8 -8; achilles 3 -2 0 0; aching 5 -3
-9 -4; aching> 4 -4 -3 -2; achy 10 -5 -2 -3; achy> 7 -3 -3 -1; across 6 -3 -3 -1; action 1 0 -1 0;
actually 11 -9 0 -4; advanced 6 -1 -2 -3; af 4 0 -4 -3; af> 2 -2 0 -1; affirmative 7 -2 -3 -6; afraid 5
-3 -2 -2; after -5 -1 0 -1; after> 1 -3 -4 0; afternoon -1 -7 1 3; afterwards -6 4 -2 1; again -3 7 -5
-5; again> 2 -3 -4 -1; age 0 -13 -7 2; age> 8 -1 -1 -5; ago -1 -7 -5 4; air -6 -8 0 8; airport 7 -6 -1
-7; alarm 5 -2 0 -4; all -3 0 0 -1; all> 8 -4 -2 -10; allotment 1 -1 0 0; almost 6 -5 -1 1; along -8 8 -3
-6; already 0 3 -7 -5; already> -5 5 -2 -7; alright 4 -4 -4 -4; also -3 -3 0 3; also> -3 4 -6 -3;
although 9 -4 -1 -7; always 5 -1 -1 -3; always> -1 6 -1 -7; am -4 -1 -6 3; am> 0 1 -3 -7; amazing 7 -4 -5
-4; an -6 1 -2 2; and -6 2 0 2; and> 6 -6 -3 -14; ang 4 1 -1 -4; ankle -9 -2 7 -13; ankle> 4 -3 -4 -2;
ankles -7 -8 8 -3; another 5 -3 -3 -5; ants -7 10 -5 -7; any 0 -6 3 -7; any> 10 -5 -7 -7; anymore 1 -1 -2
-2; anymore> 5 -3 -3 -3; anything 1 -7 -9 5; anyway -1 0 1 -3; anyway> 2 -1 -6 -2; anywhere 6 -3 -2 -3;
apart 6 -6 -1 -4; app 7 -1 -1 -4; appointment 8 -7 -3 -5; appointment> 2 0 -1 -1; are 2 -1 -4 -4; are> -3
0 0 1; area 3 -7 -3 7; arm -10 4 -2 0; arm> -4 -1 3 -4; arms 4 -3 -3 -2; arms> 2 -1 0 -1; around -1 -9 -2
8; arrived 4 -3 -1 0; arthritis 7 -7 -5 -3; as -6 8 -6 -5; ask 6 -1 -1 -6; asked 3 -4 0 -3; asking 3 -7
-1 -2; asleep -6 6 -7 -2; asleep> -1 7 -6 -11; at -2 1 -5 0; at> 1 -1 0 -1; ate 8 -3 -3 -5; autocorrect 2
-1 0 -2; awake -7 7 -3 -3; away -7 0 4 -8; away> -3 4 -2 -5; awful -9 9 -3 -3; aye 4 0 -4 -8; baby 14 -10
-4 -4; back -4 3 -1 -5; back> -3 -2 2 -4; backs 8 -5 -1 -3; bad -4 -1 -16 -1; bad> -2 -8 -3 3; badly -5 2
0 0; bailed 7 -6 -5 -6; baking -2 0 3 -6; balance 6 -5 -7 -2; balcony 6 -6 -1 -3; ball -7 -4 8 -4;
balloon -1 -5 6 -6; balloon> -4 -2 6 -5; balloons 5 -4 -2 0; band 5 -3 -3 -2; bank 6 -4 0 -2; bar 8 -3 -2
-7; bath 3 -3 -3 -5; bathroom -7 -9 -6 8; battery 4 -1 -1 -3; be 8 -2 -1 -4; beach 5 -4 -5 -5; beat 2 -5
-5 0; beating -12 -1 3 11; beats -10 -2 -2 9; beats> -5 -3 -1 5; became -4 -2 -6 6; became> -2 5 -2 -4;
because 3 0 -3 -6; become -1 4 0 -4; bed 1 0 -2 -4; bed> 4 -2 -1 -1; been -3 0 -5 -3; been> -4 2 -5 3;
before -5 -3 -3 4; before> -8 -5 -9 10; began 4 -7 -3 -2; beginning 5 -1 -2 -3; behind -7 -13 1 5; being
4 -4 -7 -4; believe 2 -1 -4 -7; below -3 -13 0 3; bend -5 7 -2 -12; bend> 4 -3 -2 -7; bending -6 6 -4 -7;
bending> -6 6 -3 -7; bends 3 -3 -2 -3; bent -2 -1 0 1; best 1 -1 0 0; bet 4 -3 -4 -3; better 4 1 -4 -4;
better> 10 -9 -5 -5; between 7 -17 -2 14; beyond 4 -1 -3 -1; big -4 1 6 -10; bigger -9 -2 9 -1; bike -3
-3 2 3; bill 3 -2 0 -3; bin 2 1 -1 -1; bins 3 -3 -1 -3; birthday -3 3 -4 -4; bit 1 -2 -10 1; bit> 1 -1 -3
-1; bits 5 -11 -3 4; black -9 -12 4 5; blacked -13 -5 -3 11; bladder -9 -11 -4 11; bless 2 0 0 -2; block
-4 5 -4 -6; blood 3 -3 -5 -3; blown -6 -4 8 -2; blue -8 -7 5 -3; blue> -7 -6 1 1; blurred -13 -4 -3 14;
blurry -10 -6 -4 7; board 5 -4 0 -1; boat 1 -4 2 -10; body 8 -16 -2 9; body> -8 -7 -4 8; boiled 12 -9 -5
-6; boiler 2 -1 0 -1; bone -1 1 -8 0; bonjour 2 -2 -1 0; boots 3 -3 -3 -7; bored 9 -1 -7 -5; boredom 1 0
-1 0; boring 7 -1 -4 -3; boss 6 -3 -2 -4; boss> 3 -3 1 -1; both -2 1 -1 -5; bothered 7 -1 -5 -4; bottom
-7 -4 -6 5; bowel -5 -3 -5 4; bowels 1 -6 -2 0; box 7 -7 0 -1; boxes 4 -3 -1 -1; boy 6 -5 -4 -3; brain 2
0 -1 -1; bread 5 0 -2 -2; break 6 -3 -1 -3; breakfast 4 -2 -4 -6; breakfast> 0 -2 -3 2; breast -3 -5 -7
8; breastbone -11 -9 -8 10; breath -13 -5 -10 11; breath> -6 -3 -4 4; breathe -14 -12 -11 17; breathe> -8
-2 -4 8; breathing 10 -1 -6 -10; breathless -12 -4 -5 11; breathlessness -10 -7 -10 11; breathtaking 7 -5
-1 -9; bridge 5 -1 -4 -10; bridge> 5 -5 -2 -4; bring 1 0 0 -1; bro 3 -3 -4 -2; bro> 4 -5 -4 -4; broke 3
-2 -6 -4; broken 10 -10 -12 -8; brother -4 -10 -8 5; bruh 5 -5 -4 -3; bruise -17 -14 20 -6; bruise> -6 -1
7 -2; bruised -12 -5 11 -7; brutal 1 -1 0 0; buckets -1 0 -1 2; buckled -11 -1 11 0; buckles -8 -12 11
-9; buckling -12 -4 12 -2; bug 3 -2 -2 -1; bug> 1 0 -1 0; bum -11 9 -8 4; burned 3 -2 -1 -2; burning -12
12 -4 -4; burst 4 0 -1 -4; bus -1 -5 4 -4; bus> 4 0 -3 -1; busy 5 -1 -1 0; busy> 5 -1 -2 -3; but 0 2 -3
-2; but> 8 -5 -6 -9; butt 4 -2 -1 -1; buttock -9 -3 -12 9; buttocks -2 -6 -1 7; button 11 -2 -2 -11;
buzzing -16 9 -6 -5; by 3 -1 0 -1; cake -1 2 -1 -5; calf -10 -1 9 -11; calf> -1 4 -1 -7; call 2 -3 -1 0;
call> 3 -1 -2 -2; called 11 -7 -7 -2; calls 7 -4 -2 -4; calm 3 -3 -2 -3; calmed 5 -2 -2 -2; calories 7 -5
-7 -5; calves 4 -3 -2 -2; calves> -4 4 -4 -4; came -5 -2 -6 2; came> 9 -1 -6 -7; can -5 -4 -1 4; cancel 4
-4 -4 -4; cancel> 5 -1 -1 -4; cancelled 3 -3 0 0; candle 10 -9 -4 -5; candlelight 7 -2 0 -7; capitals 2
-1 0 -1; car 1 -7 2 -1; carpet 0 -2 -2 1; carried 4 -4 3 -1; carry -5 -10 10 -7; carrying 1 -1 3 0; cat 6
-3 -4 -6; cat> 3 -2 -2 -3; catch -1 -2 -4 3; cats 1 0 0 0; caught -1 -2 -3 2; cause -4 -3 -5 6; cba 4 -1
-1 -1; ceiling 5 -3 -2 -1; ceiling> 5 -4 -1 -2; chair 3 -1 -4 -3; chance 5 -1 -2 -1; chance> 3 -2 -1 -2;
change 4 -2 -2 -1; changed 8 -2 -2 -4; chat 11 -1 -1 -11; checked -3 5 -5 -9; chest -18 -13 -6 22; chest>
-6 -4 -2 9; child 4 -1 -6 -10; children 6 -5 -1 -1; choir 4 0 -5 -5; church 2 1 -3 -1; circles -8 2 6
-11; class 3 0 0 -2; class> 7 0 -1 -5; clean 5 -4 0 -2; cleared 5 -4 -4 -4; client 1 0 0 -1; climb -5 -3
1 2; climbing -5 -3 -4 7; clock 6 -2 -1 -5; closed 4 -2 0 -1; club 0 -1 -2 2; cm 5 -3 0 -1; coach 5 -4 -1
-3; coach> 4 -2 -1 -1; cobra 9 -6 -2 -4; coffee 7 -8 -3 -5; coffee> 5 -1 -1 -2; coffees 4 -2 -1 -2; cold
5 -6 -4 1; cold> 1 -1 -2 0; colleague 3 0 0 -2; come 3 -11 -2 6; comes -9 -6 2 4; comfortable 3 -4 -3 -3;
comfortable> 3 -4 -4 -3; coming -4 4 0 2; company 1 0 0 0; complained 6 -1 -4 -1; complete 5 -3 1 -5;
complete> 1 3 -4 -5; completed 2 3 -3 -7; completed> 7 -6 -4 -3; completely 8 -6 -3 -3; completely> 3 -2
-3 -2; concert 4 -3 -1 -1; constant -9 9 -7 -5; constant> 10 -9 -4 -4; constantly -3 3 -2 -2; control -17
-8 -6 16; cooked 4 -3 0 -1; cool 3 -3 -2 -3; cool> 3 -3 -2 -3; cork -1 0 2 -1; corner -1 -2 -3 3;
correction 4 -3 -1 -3; cottage 3 -3 0 -2; cotton 2 -1 -6 0; couch 6 -5 -2 -2; cough 10 -9 -7 -5; cough> 4
-3 -1 -1; could 0 -7 0 5; could> 8 0 -2 -7; count 8 -5 -1 -5; count> 11 -4 -1 -6; counting 9 -6 -2 -4;
couple -2 2 0 0; courbatures 4 -3 0 0; course 1 0 0 -1; cousin 4 0 0 -3; cousins 7 -7 -1 -7; covid 8 -4
-2 -6; cow -3 3 -1 -4; crack -13 -10 17 -4; cramp 6 -4 -7 -10; crashed 4 -6 1 -5; crawling -9 9 -3 -3;
crazy 3 -9 -2 -3; crazy> -5 -6 2 -2; cried 7 -1 -5 -1; crushed 3 -2 -1 -1; crushing 3 -6 -7 1; cry 1 0 0
0; cup -3 -6 -2 5; cup> -1 -2 0 3; cuppa 6 -3 -2 -2; cups -5 6 -4 -5; current -8 4 -4 -4; curtain -1 -3
-3 6; curtains 2 0 -1 -1; cut 10 -10 -2 -1; cut> 1 -1 0 0; dad 8 -7 0 -5; daily 1 -1 0 -1; dark -4 0 -3
3; dark> 3 -3 0 -3; daughter -3 -7 -4 6; dawn 3 -2 -2 0; day 1 -4 2 -7; day> 6 -1 -6 -11; days -2 1 -4 1;
days> 5 -5 -3 -1; dead -4 8 -12 -8; dead> 1 2 -3 -10; deadline 11 -2 -3 -7; deadlines 12 -11 0 -1; dear 6
-3 -7 -1; dear> 5 -2 0 -3; deep 8 -3 0 -7; degrees -2 0 3 -6; delayed 1 0 0 0; dentist -1 -1 -3 1; denver
5 -3 -2 -2; desk 3 -1 -1 0; despite -3 3 -5 -1; di 7 -5 -2 -2; diagnosed 9 -6 -6 -7; diagnosed> 5 -3 -3
-5; did 3 -4 -2 -1; did> 10 -2 -2 -5; died 5 -4 0 -2; diet 0 1 -5 -7; different 3 -1 0 -2; difficult 7 -2
-1 -4; difficult> 4 -1 -1 -2; digging 3 -2 -1 0; dinner 2 -3 -3 1; dinner> 7 -5 -4 -2; discomfort -6 -8
-4 5; dizzy -27 25 -6 -8; dizzy> -8 5 -4 -4; do 2 -6 -4 -3; do> 5 -6 0 -4; doctor 6 -3 -6 -7; does -6 4
-3 -3; does> 2 -1 -9 -1; dog -1 -5 -5 4; dogs 5 -3 -1 0; doing -2 -2 -2 -3; doing> 10 -10 -4 -13; doms 7
-6 -3 -4; done 5 -2 -3 -3; done> 7 -2 -4 -8; door 5 -10 -6 -2; doorbell 11 -9 -3 -4; double -12 -10 0 11;
down -4 3 -2 -5; down> 4 -8 1 -2; downs -4 5 -1 -1; downward 0 0 -1 -2; drank 0 0 0 -2; drill 2 -3 -1 2;
drive 2 -2 -2 -12; driving 2 -1 0 -1; drooped -8 -2 -3 6; drooping -18 -3 -4 8; drooping> -6 -3 -3 4;
droopy -7 0 -1 8; drop -7 9 -3 -4; dropped 2 -4 2 -2; dropping -4 6 -3 -6; drove 3 0 -3 -5; drum 3 -7 1
-6; drunk -1 -1 -1 2; dry -2 0 3 0; duck 3 -4 -2 -3; due 7 -3 -1 -4; dug 4 -3 0 -4; dull 11 -7 -5 -1; dun
5 -4 -3 -4; during -10 6 -3 0; dusted 3 -3 -2 -3; dusted> 3 -3 -3 -3; dying 1 0 0 0; e 8 -8 -7 -4; each 2
1 -2 -1; earlier 2 3 -4 -4; early 6 -4 -4 -2; early> 5 -2 -2 -4; ease -7 8 -3 -6; ease> -3 3 -2 -5; eases
-1 4 -3 0; easier 6 -1 -5 -1; easter 9 2 -1 -2; easy 3 -1 -1 -1; easy> 3 -1 -1 -1; eating 8 -4 -6 -3;
effort 4 -2 -1 -1; eggs 2 0 1 -2; eggs> 4 -1 -1 -3; ego 4 -1 -1 -1; eight 1 -4 -5 4; either 10 -7 -3 -1;
either> 5 -1 -1 -3; elastic 4 -4 1 -2; elbow -1 -1 0 -7; elbow> 3 -4 -3 -3; electric -13 9 -5 -8;
electricity -7 6 -3 -6; elephant 0 -1 -2 3; eleven 9 -5 -2 -5; else 2 2 -2 -3; else> 2 -1 -3 -4;
elsewhere 8 -7 -1 0; elsewhere> 3 -2 -1 -2; emails 1 -1 0 0; embarrassing -6 -3 -3 6; emergency 3 -3 -2
-1; empty 1 0 0 0; end -1 -4 -5 1; end> 1 1 -4 -8; ended 4 -2 0 -2; energy 9 -12 -7 -6; energy> 4 -1 -2
-1; english 8 -3 -7 0; enough 7 -5 -7 -8; entirely 4 -3 0 0; erg 3 -1 0 -2; even 0 -8 -10 6; evening -2
-5 1 0; evening> 5 -1 -4 -4; evenings 3 -3 -3 0; ever -11 5 8 -5; every -6 6 -4 -2; everyone 4 -1 -4 -1;
everything -2 0 -4 0; everything> 3 -11 2 1; everywhere 3 -2 0 0; exactly 3 -2 -1 0; exam 4 -3 -1 -4;
exam> 2 0 -1 0; exams 7 -5 -5 -5; except 8 -5 -4 -5; excuse 3 -3 0 0; exercise 0 1 0 -5; exercise> -3 0
-2 -5; exercises 5 -5 -3 -3; exercises> -4 3 -7 -3; extra 4 -4 0 0; eye -10 -4 0 14; eye> -1 -1 -1 3;
eyes 3 -1 -1 -3; eyes> -4 -1 -1 4; ez 5 -4 -4 -4; face -2 -16 -5 9; fainted -21 -8 -7 23; fainted> -8 -3
-6 8; fait 5 -3 -1 -4; fall -2 -4 4 -9; falling -3 3 -2 -7; fam 7 -2 -7 -2; family 7 -5 -3 -2; far 6 -6
-2 -1; fasting 2 0 -1 -1; fat -1 -4 11 -1; father -12 -10 -5 12; fave 6 -5 -5 -4; favourite 6 -4 -7 -4;
fed 3 -3 -1 -4; feel -8 3 -3 -2; feeling -4 3 -7 -1; feeling> 6 -7 -2 0; feels -3 6 -9 -1; feet -7 9 -5
-7; feet> -5 5 -4 -2; fell -1 -1 -4 2; felt -10 -1 3 4; felt> 9 -8 -8 -1; fence 8 -3 -1 -5; fever -13 14
-3 -14; feverish -7 7 -3 -5; few -10 -6 -3 5; film 5 -4 -6 -5; final 5 -1 -2 -1; finally 6 -4 0 -1; find
5 0 -4 -1; fine 3 -3 -5 -4; fine> 2 0 -5 -2; finger -1 9 -7 -10; fingers -9 12 -3 -10; fingers> 1 -1 -4
-5; fingertips 1 1 -1 -5; fini 6 -5 -3 -2; finish 5 -3 -4 -3; finish> 0 4 -9 -3; finished 3 -1 -4 -2;
finished> 4 -3 -4 -5; finishing 3 -4 -3 -3; finito 6 -4 -4 -4; fire 6 -4 -1 -4; first 5 -3 2 -6; fish 1
-4 -7 2; fish> -10 -1 -1 10; five 5 -5 -3 -5; five> 5 -2 -2 -2; flat 10 -6 -2 -4; flexor 7 -6 -6 -6;
flight -4 -1 0 0; flooded 8 -3 -1 -3; floor -1 0 -6 0; floor> -4 -2 -5 4; floors 2 -2 0 -2; flow 2 0 -1
-5; flu 9 -4 -3 -7; flu> 4 -3 -2 -1; flue 7 -9 -9 -6; fluttering -8 -4 -4 7; fold -6 7 -3 0; fold> -1 -6
1 3; folds -9 2 9 -1; food 5 -1 0 -3; foot -14 11 4 -10; foot> 4 -3 -1 -6; football 1 -2 1 -1; football>
0 -3 4 -2; footy 5 -4 -1 -3; for -2 4 -7 0; force -3 -6 -9 8; forearm 6 2 -3 -2; forearms 3 -1 -1 0;
forget 2 -1 -1 -1; forget> 5 -2 -1 -1; forgot 12 -3 -2 -9; forgot> 7 -1 -1 -5; forgotten 3 -1 -1 -2; form
8 -4 -1 -8; forty 5 -1 0 -5; forward -3 5 -2 0; found -4 -8 -8 5; four 4 -4 -2 -3; four> 8 -2 -3 -3;
fourth 5 -2 -5 -1; fr 6 -2 -1 -2; free 7 -5 0 -5; free> 4 -1 -1 -1; friday -5 3 -2 -9; friday> 5 -2 -2
-5; fridge -3 3 -1 -2; friend 5 -1 -2 -1; friends 6 -3 -3 -2; frog 6 -8 0 -6; from 1 0 -1 -2; from> 7 0
-6 -1; front 3 -6 -2 -2; frost 10 -1 -9 -4; froze 5 -5 -1 -2; full 0 -9 -2 1; full> 4 -2 -4 -3; fully 3
-6 -5 1; fully> 0 -4 -4 1; fun 3 -2 -1 -1; function 2 0 -2 -1; funeral 11 -3 -3 -11; funny -6 -1 -7 5;
further 9 -7 -2 -5; game 10 -8 -6 -1; gaming 2 -1 0 0; garage 7 -5 -1 -3; garden -1 -6 -6 3; gardening 3
-6 3 -1; gardening> 4 -2 -3 -2; gas 5 -1 0 -3; gasping -7 -3 -4 7; gate 0 -3 0 -1; gave -5 -8 9 -10; get
0 7 -8 -5; get> 9 -6 -3 -7; getting -3 -3 3 -3; give 6 -2 -4 -3; gives -18 -7 13 -5; giving -6 -3 8 -2;
glasses 3 1 -3 -6; glute -3 2 -2 -8; glute> -4 6 -7 -1; glutes 10 -2 0 -10; go -8 4 4 0; go> 2 -1 -4 -4;
god 3 -1 -1 -1; god> 6 -3 -1 -2; goes -7 -1 4 2; goes> 1 -3 -5 -2; going -2 -3 -10 5; going> -3 5 -2 -4;
gone -1 2 -6 -2; gone> 0 3 -5 -4; good 7 1 -5 -5; good> 8 -7 -1 -2; goodness 1 0 -1 0; gorgeous 8 -3 -3
-6; got -4 3 -3 -2; grandchildren 9 -7 -3 -3; grandkids 2 -3 0 -3; grandson 5 -4 -3 -7; grapefruit -4 0 4
0; great 8 -3 -9 -6; great> 10 -5 -3 -3; grey -1 -1 0 2; grip -13 11 -4 -8; grippe 10 -4 -2 -5; groin 0
-18 4 13; groin> -5 -8 2 -1; guess 3 -3 -3 -3; guess> 6 -2 -3 -5; guests 8 -1 -1 -7; guests> 3 -1 -1 -2;
guten 3 -1 -2 -2; guy 4 -4 -5 -4; gym 9 -5 -5 -7; gymnast 4 0 -2 -2; ha 6 -2 -3 -2; had -2 -2 -5 4; had>
7 -5 -7 -7; haha 5 -3 -3 -3; haha> 4 -2 -1 -1; half -2 -4 -1 2; half> 4 -1 -3 -9; halfway 1 -2 -1 -4;
halfway> 3 -15 -1 -6; hamburg 5 -5 -3 -5; hamstring -6 -1 5 -6; hamstring> -2 -1 3 -2; hamstrings 5 -2 -2
-1; hand -9 10 -4 -8; hand> -7 7 -4 -6; hands -10 9 -3 -9; hanging -13 -2 -2 11; hanging> -5 0 -6 7;
hangover 5 -1 -2 -2; hangs -5 0 5 4; happen 4 0 -1 -2; happened -4 -2 -3 -1; happy 9 -6 0 -4; happy> 3 0
-1 -1; hard 7 -4 -7 0; hard> 5 0 -2 -2; hardly -6 -10 4 0; harvest 2 0 -1 0; has -5 -2 0 0; have -4 4 -1
-4; have> 8 -2 -5 -1; having -1 -1 -3 1; he 5 -2 -5 -2; head -9 10 -9 -4; head> -2 -1 -3 3; headache 5 -6
-6 -4; headed -10 8 -3 -4; health 8 -2 -2 -4; hear -4 -3 4 -5; heard -7 -6 8 -5; heart -4 -11 -9 11;
heartbeat -10 -8 -2 5; heating 10 -8 -5 -3; heavy -2 -8 -3 6; heavy> 2 -3 -3 2; hecho 2 -2 -1 0; heel -6
1 4 -6; heel> -11 3 2 -3; held 6 -3 0 -5; hell 5 -5 0 0; hello 1 -2 -4 -1; hello> 4 -4 -3 -4; help 4 -5
-6 0; help> 1 -7 -7 0; helped 6 -2 -2 -3; helps -8 8 -2 0; helps> -2 2 0 0; hens 1 -1 0 0; her 10 -7 -2
-6; her> 12 -8 -5 -9; here 3 -4 -3 -3; here> 5 -11 -3 -4; hey 7 -2 -1 -4; hi 4 -3 -6 -2; hi> 7 -6 -1 -4;
hike 4 -2 0 -1; hike> 3 0 0 -2; hill 4 -4 -2 -1; him 7 -3 -2 -1; hinge 5 -11 -5 -1; hip -3 4 -1 -10; hip>
-3 0 -1 -5; hips -1 3 -3 -5; hips> 7 -1 -1 -5; his 1 -9 5 -12; hit -2 -4 -1 3; hold -4 -1 -2 2; holding 3
-4 -7 3; holds 2 -2 -1 0; hole 0 -9 3 -2; holiday 9 -8 -1 -1; home 3 -2 -4 -3; home> 5 -2 -3 -2; homework
8 -3 -3 -7; honest 7 -1 -4 -3; honestly 3 -5 0 -4; hope 6 0 -3 -3; hopping -11 -8 8 -7; hospital -1 -8 -5
6; hot -3 -4 3 -10; hot> -1 -4 2 -3; hotel 9 -6 -4 -3; hotel> 1 0 -1 -1; hour 3 -3 -1 -1; hour> -7 4 -1
2; hours 4 2 -2 -4; hours> 2 0 -1 -1; house 6 -5 -4 -3; house> -1 1 -3 -2; how 1 -2 -7 0; however 4 3 -3
-3; hr 7 -2 -4 0; hrs 6 -6 -1 -2; huge 2 0 -1 -1; hundred 6 -5 -4 -9; hurt 6 -5 -2 -2; hurt> 1 -15 3 -5;
hurting 3 0 -5 -5; hurting> 2 -2 -3 -4; hurts 0 2 -1 -3; hurts> 0 -1 -8 2; husband 0 -10 -7 6; i 0 -3 -2
0; i> 7 -7 -9 -8; ice -3 0 4 0; ich 3 -1 -1 -1; id 3 -1 0 -1; idea -4 6 2 0; idk 1 -1 -6 -6; if -7 -3 5
-5; ill 8 -2 -3 -2; ill> 7 -4 -4 -2; impossible 6 -3 -2 -1; in -1 0 0 0; in> 4 -3 -1 -2; inbox 4 -3 -2
-1; indoors 4 -4 -2 -5; infection 11 -6 -1 -10; inner -2 -5 -2 4; inshallah 4 -1 -2 -2; inshallah> 4 -1
-2 -2; inside 1 -8 0 -2; instead 8 -6 -2 -3; instead> 3 -2 -2 -1; internet 9 -5 -2 -5; into -3 2 -11 2;
irregular -11 -6 -5 11; irregularly -6 -2 -2 5; is -2 -2 2 1; is> 3 -1 -10 -7; it 1 -2 0 -4; it> -1 -3 4
-1; itself 0 0 -5 1; itself> -11 6 -8 2; ja 4 -3 -1 -1; jar -3 3 -2 -4; jaw -7 -7 -5 6; jaw> -2 -2 -2 5;
jelly 5 -7 2 -8; jk 5 -2 -2 -1; job 7 -5 -1 -1; joined 4 -1 -1 -3; joint -13 8 6 -6; jumbled -2 0 0 2;
jump 7 -5 0 -5; jumped 6 -4 0 -6; jumper 5 -5 -1 0; jumping -10 0 0 10; june 7 -8 -3 -4; just 2 -6 -4 -1;
k 5 -1 -3 -7; k> 3 -3 -3 -3; keep -6 3 -1 0; keeps -11 3 4 -1; kept 2 1 -6 -6; kettle 13 -7 -4 -7; kg 6
-1 -9 -2; kick 1 -1 0 0; kicked 2 -7 1 -4; kid 14 -13 -4 -4; kids 7 -4 -5 -5; kids> 7 -5 -3 -3; kill 6 -4
-3 0; killer 2 -1 0 0; killing 9 -6 -10 -11; kilos -4 5 -2 -3; kind 3 -3 -2 -3; kinda 0 -3 -4 1; kindly 6
-2 -2 -2; kitchen -8 -2 -3 6; kitchen> 3 -3 2 -3; km 7 -3 -2 -5; knackered 11 -1 -5 -11; knee -1 -6 6 -9;
knee> 2 0 -4 -5; kneeling -1 -8 2 -2; knees 4 -12 2 -5; knees> 6 -3 -5 -4; knitting 1 0 -1 0; know -2 -2
0 -3; know> -3 0 -1 3; knows 1 0 0 0; knows> 1 0 0 0; l 3 -2 -2 -1; ladder -3 -1 2 -4; lads 3 -3 -3 -2;
lake 3 -3 0 0; last 1 -5 0 -2; last> 5 0 -3 -4; lasted -3 1 0 3; late 6 -4 1 -7; late> 4 -3 -1 0; later 5
-2 -2 -4; later> 6 -2 -3 -1; latter 2 0 -1 -1; laugh 7 -4 -2 -4; laughed 5 -6 0 -4; laughing 4 -1 -1 -3;
laughing> 0 -2 -2 0; law 9 0 -2 -9; lawn 4 -1 -1 -2; lay 0 3 -5 -3; lazy 8 -3 -3 -3; least -1 -1 -3 0;
leave 2 1 -3 -3; leeds 7 -6 -1 -2; left 0 -1 0 -2; left> 4 -1 -5 -2; leg -11 6 3 -7; leg> -11 1 0 -4;
legs -4 -1 -6 0; legs> -8 0 -4 4; lengths 3 -2 -1 -4; less 7 1 -4 -9; less> 1 -1 0 0; let 5 -1 -2 -2;
level 8 -3 -4 -5; licking -4 -1 -1 4; lie -2 4 -4 -5; lie> 2 -2 -4 -1; life 2 -2 -5 -1; lift 1 1 -6 -1;
lifting 7 -5 -4 -9; light -8 6 -3 -3; light> 7 -3 -2 -7; lighter 9 -3 -8 -3; lighter> 8 -1 -4 -4;
lightheaded -14 14 -5 -5; lightning -12 10 -4 -6; lights -7 -6 4 5; like -1 1 -1 -2; like> 3 -3 0 -1;
liked 1 0 -1 0; lil -2 5 -6 -8; line 3 -2 -2 -3; lisbon 2 -1 -1 0; list 6 -4 -4 -3; list> 6 -4 -5 -3;
listen 1 0 0 -1; listening 4 -2 -1 -1; literally -5 0 1 4; little 7 1 -7 -5; live -1 3 -3 -3; living 6 -5
-4 0; load -1 -10 9 -10; loads -8 8 -1 -1; lol 1 -2 -3 -2; lol> 5 1 -2 -12; long 3 1 -4 -6; longer 8 -2
-2 -7; loo -1 -4 3 2; look -3 -3 -4 2; looked 9 0 -3 -7; looks 0 -3 3 -8; loose 8 -5 -4 -14; lose 1 1 -3
-4; loser 3 -2 -2 -2; losing -11 3 -5 1; loss -6 12 -13 -8; lost -8 3 -5 3; lost> 7 -8 -7 -4; lot 1 -2 -3
-7; lot> 4 1 -9 -5; lots 4 -1 -4 -1; loud -7 -4 6 -5; love 6 -2 -8 -4; loved 3 2 -2 -3; lovely 7 -7 0
-13; lovely> 3 -1 -2 -2; low -1 -2 0 2; lower 4 -3 -1 -7; lowkey 2 -1 0 -1; lunch 3 -1 -6 -2; lunch> 4 -3
2 -5; lunge 2 -6 2 -5; lunge> -3 -2 4 -6; lunges 3 -5 -2 0; lunges> 5 -4 -2 -4; lvl 7 -6 -1 -4; lying -5
-1 -5 4; lyon 1 -1 0 0; m 3 -1 -1 0; ma 2 -7 1 -6; mad -8 -2 1 1; mad> -1 3 -4 -3; madam 5 -4 -7 -3; made
0 -7 4 -2; make 0 0 -3 -3; makes -2 -4 -11 2; man 9 -8 -3 -5; man> 2 -1 0 0; manage 10 -5 -7 -3; managed
7 -6 0 -3; many 6 -3 0 -3; margaret 9 -9 -4 -1; mark 3 -4 0 -3; marking -2 3 0 -1; mat 3 -7 -4 -1; mat> 5
-6 -7 -1; match 1 -1 2 -1; mate 9 -3 -4 -4; mates 3 -3 -2 -3; maths 6 -5 -4 -2; matter 4 -4 -4 0; max 5
-4 -5 -5; may 5 -10 1 -1; maybe -7 1 -4 6; maybe> 10 -6 -5 -12; me -3 1 -1 -5; me> 0 -3 -2 -2; mean 3 -4
-2 0; mean> 3 -4 -4 -3; meant 6 -6 -5 -3; medicine 2 -2 -1 -2; meeting 6 -4 -2 -7; meeting> 4 -1 -2 -2;
meetings 8 -5 -1 -1; meetings> 4 0 -1 -2; melon -5 -1 7 -4; memory 6 -6 -2 -8; men 1 0 0 0; mention -1 4
-6 -3; message 6 -1 -1 -3; messages 3 -2 -2 -3; messages> 4 -2 -1 -1; mid 4 -3 -2 -1; middle -1 2 -7 -2;
midnight 6 -5 -1 -4; might 2 -4 0 -3; migraine 12 -6 -3 -6; migraine> 1 0 -1 0; miles 1 0 -4 -4; milk 4
-4 -1 -4; min 1 -6 -1 -1; min> -4 0 -3 1; mind 0 -2 -2 -2; mine -2 -10 -6 5; mins 3 -4 -1 1; minus 3 -3
-2 -3; minute 6 -5 -4 -1; minute> -5 -6 -7 7; minutes 1 -1 -2 2; minutes> -1 -5 -4 2; miss 7 -1 -7 -2;
miss> 6 -1 -6 -4; missed 7 -2 -3 -4; missing -8 -4 0 8; moment -5 -5 -6 6; monday 5 -5 -3 -2; monday> 3
-5 -3 0; month -5 6 -2 -4; months -4 4 -1 -5; mood 8 -5 -3 -3; more -3 2 -2 0; more> -3 3 -6 4; morgen 1
0 -1 0; mornign 9 -5 -4 -4; morning 2 -3 -1 -2; morning> 0 -1 -2 0; mornings 1 -1 0 0; most 7 -1 -2 -3;
mostly 6 0 -1 -5; mother -3 -15 -11 8; motivation 8 -3 -4 -5; motivation> 4 -3 -4 -2; mountain 5 -5 0 -3;
mouth -7 -12 -5 12; move 4 7 -10 -7; moved -3 4 -1 -2; moves 9 -5 -3 -4; moving 4 -1 -1 -2; msg -3 -5 -1
3; much 0 -5 2 -6; much> 2 -3 -1 -3; mum 2 -4 -3 -1; murder 5 0 -5 0; murdered 5 -3 -3 0; muscle 4 -9 3
-7; muscles 5 -4 0 -2; music -1 3 -1 -4; must -8 -5 -5 8; my -4 0 1 1; myself -9 -12 -5 13; myself> -7 -1
-2 7; na 2 -2 0 0; nah 4 -3 -3 -3; nah> 4 -4 -4 -3; name 6 -7 -4 2; names 9 -7 -3 -7; nan 2 -1 0 0; nap 5
-1 0 -5; nasty 2 0 -1 -1; near 6 -1 -4 -1; nearly -4 -4 -2 1; neck 5 1 -4 -4; neck> -4 -1 1 -2; need -4
-6 -3 5; needed 7 -6 -2 -4; needle 2 -1 -2 -1; needles -9 10 -4 -5; neighbour -9 -7 -3 9; neighbours 5 -5
0 -3; netflix 3 -1 -1 -1; never 5 -4 -3 -6; new 1 -8 -4 4; new> -3 -2 -3 3; news 5 -3 -5 -5; next 0 -9 -8
5; ngl 3 -2 -2 1; ngl> 6 -3 -1 -3; nice 5 -2 -5 -10; nice> 3 -3 -2 -2; nicely 3 -2 -1 -1; niggle 7 -4 -4
-1; night -11 9 -7 -1; night> 5 -6 0 -4; nights -6 9 -7 -9; nine 4 -2 0 0; nite 1 -1 0 -1; no -2 1 3 -4;
no> 11 -3 -6 -3; nobody -2 -8 5 -3; noise -4 -3 4 -2; none 7 -2 -4 -1; none> 6 -2 0 -4; noon 3 -4 -1 3;
noon> 12 -11 -1 -6; nope 6 -4 -2 -4; nope> 4 -1 -2 -1; normal 6 0 -9 -8; nose 10 -3 -3 -5; not -5 -1 1 2;
note 3 -2 -1 -1; nothing -1 -4 -6 2; nothing> 1 -10 -6 2; notice -7 -1 -4 3; noticed -2 0 1 -1; noticing
-4 -4 -3 3; now -3 -2 2 1; now> 2 -1 -3 -6; nowhere -11 -5 -6 13; numb -21 13 -9 4; numb> -9 4 -5 2;
number 3 -2 -3 -1; numbness -18 12 -10 -3; o 4 -3 0 0; obviously 6 -6 -4 -1; oclock 4 -5 -5 1; oclock> 3
0 0 -2; odd 6 -8 -8 5; of 0 0 -2 -1; of> 4 -4 -6 -4; off 2 -9 0 -5; off> 4 -3 -4 -4; office 3 -1 -6 -6;
office> 5 -2 -4 -5; oh 7 0 -1 -5; ok 0 -2 -8 -4; ok> 1 -1 -4 -4; okay 4 1 -5 -8; old 10 1 -2 -4; omg 6 -5
2 -2; omg> 1 -1 0 -1; on -3 -4 3 -2; on> 0 2 -4 -10; once -2 -3 -2 6; once> 5 -1 -1 -4; one -3 -4 -2 1;
one> 6 1 -6 -11; ones 4 -5 -3 -7; ones> 3 -3 -3 -6; only 1 -1 -1 -3; only> 3 -2 -1 -4; oops 2 -2 0 0;
open 4 0 -2 -7; opened 9 -3 -4 -11; opener 8 -3 -1 -8; operation 3 -10 1 -7; or 11 -3 -3 -13; or> 3 -2 -3
-2; osteoporosis 5 -4 -1 -2; other -4 -11 8 -7; other> -3 -3 3 -1; others 4 -1 -2 -1; others> 3 -2 -3 -3;
otherwise 6 -2 -1 -7; ouch 5 -3 -2 -3; ouch> 6 -4 -4 -4; oui 3 -3 -3 -2; our 7 -7 -1 0; out -2 -7 0 4;
out> 3 -7 -7 -1; outer -1 8 -3 -7; outside 4 -1 -5 -5; over -5 -1 -4 4; over> -6 10 -14 -14; overnight
-10 -7 10 -6; overslept 6 -4 -2 -3; overslept> 6 -5 -2 -3; overtime 8 -6 -2 -1; own 5 -3 -2 -1; packed 1
1 -3 -4; pain -1 2 -3 0; pain> -3 -3 1 -1; painful 3 -8 -1 -7; painful> 4 -3 -4 -5; paining 2 -3 -7 -3;
paining> -4 5 -8 -12; pains -11 2 -13 4; palpitations -16 -14 -8 18; palpitations> -8 -6 -3 9; pancakes 6
0 0 -6; paper -13 -11 -11 13; parcel 6 -4 -2 0; parents 0 -3 3 -7; park 5 -4 -3 -7; parked -8 -3 -5 7;
part 5 0 -4 -3; part> 3 -1 0 -1; partly 8 -3 -3 -3; party 7 -5 0 -2; pass -5 -12 -7 11; passed -15 -5 -5
14; past 3 -2 0 -1; pasta 2 -1 0 0; patch -5 -1 2 -8; patients 6 -3 -6 -6; pause 6 -2 -1 -3; pause> 8 -2
-2 -4; peace 7 -5 -5 -6; pee -12 -14 -8 18; pee> -5 -4 -5 7; people -1 1 -2 -2; percent 5 -5 -1 -1;
percent> 5 -1 -1 -3; perhaps 6 -2 -4 -4; period 6 -6 -2 -2; period> 4 -3 -1 -1; phone 5 0 -10 -2; physio
3 -3 -1 -3; piano 10 -6 -2 -5; pick 9 0 -1 -9; pictures 3 -2 -1 -2; pigeon 9 -2 -2 -5; pillow -4 4 -2 -4;
pinky -4 7 -3 -12; pins -8 8 -4 -5; pitch -1 3 -1 -3; pizza 4 -3 -3 -4; place -7 -5 -7 10; plan 8 -6 -2
-4; plan> 1 0 0 -1; plane 2 0 -1 -1; plank 5 -3 -2 -4; plank> 3 -2 -5 -3; planks 5 -5 2 -4; planks> 4 -6
4 -7; planned 8 -7 -5 -1; planted 4 -5 -3 -3; plate 0 -2 0 0; platform 2 0 -1 -1; play 4 -3 -3 -4; played
1 -5 0 -4; playlist 3 0 -1 -2; pleasant 3 -2 -1 -1; please 6 -2 -2 -2; please> 5 -2 -3 -2; pleased 3 -3
-1 -8; plumber 8 -4 0 -3; plus -10 10 -3 -2; pm 4 -3 -2 -2; pm> 5 -3 -4 -3; point 9 -5 -7 -3; poisoning 5
-2 0 -3; pool 5 -5 -2 -6; poor 5 -4 -7 0; pop -18 -15 20 -5; pop> -3 -1 3 -5; popped -21 -11 23 -6;
popped> -5 -1 6 -1; porridge 7 0 -2 -4; porridge> 7 0 -2 -4; pose 3 1 -4 -5; pose> 8 -6 -3 -2; position
-4 6 -1 -9; possible 0 -6 4 -4; postman 4 -3 -1 -4; potatoes 7 -2 0 -4; pounds 1 1 0 -2; power -3 10 -13
-11; practice 5 -9 6 -5; pregnant 8 -2 -3 -4; pregnant> 8 -4 -5 -5; press 3 0 -1 -2; pressed -4 -4 -4 6;
pressing -2 -10 -8 11; pressure -12 -3 -4 11; pressure> -3 -3 0 3; pretty 5 -2 -3 -2; prickling -11 12 -9
-5; prob 3 -9 -6 1; probably 3 -3 -2 -2; problem 1 -6 -7 0; problem> 4 -7 -8 -2; program 11 -6 -10 -11;
programme 6 -2 -1 -4; programme> 4 -2 -1 -3; promise 8 -7 -4 -5; promise> 2 0 -1 -1; proper -10 4 1 -3;
properly -7 2 -6 2; properly> -6 3 -7 -1; proud 4 0 0 -2; puffed -6 -4 6 -1; puffy -7 -6 6 -4; pull 15 -8
-4 -11; pulled 1 -9 -1 -6; purple -7 -10 9 -5; push -9 3 -3 2; put 1 -13 6 -9; quads 7 -4 -2 -1; quarter
5 -1 -3 -4; quarters 1 0 -1 0; question 7 -8 -6 -6; quick 3 -1 -2 -2; quiet 1 -1 0 0; quit 6 -9 -6 -3;
quit> -4 -2 -4 4; quite -1 3 -6 2; qx 1 -1 -2 -4; qx> -4 1 -2 -2; r 3 -2 -2 -1; race 5 -10 -5 0; racing
-12 -5 -2 13; radiates -10 11 -9 -1; radio 8 -8 -3 -5; rain 12 -12 -6 -8; rained 6 -1 -4 -2; raining 9
-10 -1 -3; rainy -1 2 0 -1; ramadan 4 -3 -1 -1; ran 4 -1 -1 -2; rang 3 -1 -1 -2; rang> 3 -2 -1 -1; rate 0
1 -3 -3; rd 1 -5 0 -1; reach 2 -1 -1 0; reached 0 -3 2 -3; read 5 -3 0 -4; reading 3 -3 -3 -8; ready 3 -2
-3 -3; real 4 -1 0 -3; really -2 0 -2 -2; receive 2 0 0 -2; red -2 -3 3 -1; regatta 0 -2 -1 2; rehearsal
4 -2 -1 -1; remember 8 -8 -6 -10; remember> 3 -2 -3 -6; reminder 5 -5 -2 -2; rep 0 -4 3 -2; report 11 -6
-7 -8; report> 9 -1 -10 -4; reps 6 -5 -3 -2; rest 7 -11 -2 -3; rest> 3 -3 -2 -1; results 3 -3 -4 -3;
reunion 6 -3 -2 -1; ribs -5 -5 5 -2; rice 4 -5 -4 -3; ride 2 -1 -2 -4; right 1 1 -1 -4; right> 3 -4 2 -8;
ring -7 3 4 -7; ringing -1 0 1 -1; river 3 -4 -3 -6; road 7 -5 0 -6; roll -5 7 -7 -11; rolled -1 0 2 -3;
rolls 7 -7 -6 0; roof 2 0 -4 -6; room 1 1 -3 -6; room> -3 -1 5 -1; roses 6 0 0 -8; rough 8 -7 0 -1;
roughly 5 -1 -3 -1; round -1 -2 -2 1; round> 0 -10 -1 0; rounds 3 -5 0 0; rounds> 5 -5 -5 -5; routine 9
-7 -1 -2; row -1 -2 0 -2; rowing 5 -1 -1 -4; rubber -6 -2 7 -1; run 3 -1 -3 -1; run> 7 -2 -1 -3; running
-3 5 -9 -6; runs -11 12 -8 -6; s 2 -3 2 -1; sad 4 -10 -3 -3; saddle -5 -6 -3 7; said 4 -2 -1 -1; same 4
-3 -5 -5; same> 5 -4 -5 -3; sang 1 0 -8 -8; sat -6 1 -4 5; saturday 7 -6 0 0; saw 2 -4 -10 0; say -1 -1
-2 -1; says 1 -4 -3 0; scale 11 -5 -5 -2; scale> 8 -1 -6 -1; school 2 -2 1 -2; school> 7 -4 -6 -6;
scratch 6 -4 -1 -1; screaming 5 -4 -3 0; seat -1 4 -8 -1; seated -5 3 2 -4; sec -6 5 -6 -3; second -1 -2
-9 4; second> 3 -5 -4 1; seconds -3 -3 -1 4; seconds> -3 -5 -2 5; secs -6 -2 -2 6; see -4 -8 -9 10;
seeing -9 -9 -5 9; send 5 -2 -1 -2; sending 4 -2 -1 -1; sentence -6 -2 -3 7; session 3 -2 -2 -2; session>
4 -3 -7 -3; sessions 4 -2 -1 -1; set 1 1 -5 -7; set> -3 3 -6 -3; sets 7 -3 -2 -2; sets> 2 1 -3 -1; settle
-6 6 -4 -2; settled 5 -5 -6 -4; seven 5 -2 -2 -3; seven> 6 -2 -3 -3; severe -22 -7 18 4; sewing 3 -14 -3
-2; shake 9 -5 -4 0; shame -1 0 2 -1; sharp 6 -8 8 -2; sharp> 4 -1 -2 -1; she 7 -2 -4 -2; shedding 7 0 -6
-1; shift 10 -5 -3 -9; shift> 6 -2 -4 -1; shin -9 -1 7 -10; shin> -3 -1 4 0; shins 8 0 -5 -3; shivering
-11 11 -8 -11; shock -7 0 2 -5; shoe 1 -4 4 -4; shooting -19 10 0 -4; shoots -7 7 -8 -7; shop 9 -2 -2 -6;
shopping -2 0 5 0; shops 6 -1 -3 -5; short -5 -4 -4 6; short> 7 -3 -3 -9; shorter 5 -2 -2 -2; shorter> 6
-3 -3 -4; shortness -7 -3 -3 3; shot 3 -2 -2 -1; should -7 -2 6 -5; shoulder -1 -3 4 -7; shoulder> 4 -6
-3 -4; shoulders 7 -5 -1 -1; show 3 -1 -3 -2; shower -3 -2 -3 5; shut 8 -2 -2 -5; si 6 -5 -4 -3; sick 15
-2 -3 -11; sick> 5 -2 -3 -1; side -3 -8 -4 4; side> -3 1 -3 -8; sides 6 -6 -3 -2; sides> 3 -3 -2 0; sight
-11 -7 -5 8; signed 8 -3 -4 -7; simply 2 0 -1 -1; since -9 -2 -4 4; since> 1 -5 -6 0; single 4 -1 -2 -1;
sink -7 -2 -2 7; sir 6 -6 1 -1; sir> 5 -4 -3 -6; sister 4 -6 -1 -6; sit -4 -2 -3 6; sit> -1 4 -2 -8; sits
5 -6 -2 0; sitting -7 -10 -5 7; six 6 -5 -7 -6; size -2 -5 6 -5; skip 8 -6 -6 -5; skipped 7 -6 -4 -3;
skipped> 9 -3 -5 -9; skipping -2 -11 -3 5; skipping> 7 -5 -9 -7; skips -7 -5 -2 5; slammed -4 -1 4 0;
slay 6 -5 -3 -5; sleep -7 10 -9 -9; sleeping 2 -2 -5 -3; sleeps -11 13 -10 -9; slept 5 0 -1 -6; slight 4
-2 -5 -5; slip 9 -4 -4 -10; slipped 0 -8 5 -8; slot 8 -8 -7 -7; slow 4 -5 -2 0; slowly 4 -6 -4 -4;
slurred -15 -5 -6 15; slurred> -7 -4 -3 11; small 5 -3 -5 -5; smth -4 -1 4 -1; smug 7 -4 0 -5; snap -12
-9 14 -8; snapped -11 -8 12 -5; snow 8 -4 -5 -2; so 1 -2 -2 -4; so> 1 3 -8 -8; sofa 2 -4 0 1; sole -4 8
-1 -11; sole> -1 7 -1 -7; solid 6 -5 0 0; some 0 0 -4 -7; somebody -6 -5 -3 7; someone -8 0 5 2;
something -3 -11 6 -2; somewhere 5 -2 -1 -3; son 7 -5 -6 -6; sore 6 1 -7 -5; sore> 7 -6 -2 -3; soreness 6
-5 -3 -3; sorry 4 -5 -2 -2; sorry> 3 -1 -1 -1; sorted 4 -3 -3 -3; sound -10 -11 11 -1; soup -5 4 -1 -1;
space 7 -3 -4 0; speak -9 -7 -3 9; speech -9 -8 -6 10; speech> -6 -1 -1 6; spent 2 -1 0 -1; spinning -12
9 1 -4; split 2 -1 0 -1; splits 4 -3 -3 -2; spot 3 -1 0 -1; spreadsheets 6 -4 -8 -9; squat -1 2 -4 -2;
squats 0 1 -3 -3; squats> -2 2 -2 -1; squeezing -4 -3 -5 5; stabbing 3 -15 6 2; stairs -11 -3 3 2;
stairs> -1 -3 -1 -12; stand -5 -9 8 -4; standing -9 10 -6 -2; stared 3 -2 0 0; staring 3 -2 -1 -1; start
7 -4 -1 -2; started 0 -9 -3 3; started> 11 -3 -5 -8; starting 3 -2 -2 -3; static -5 7 -8 -3; station 6 -1
-3 -3; stay -4 6 -3 -6; stayed 3 -2 0 -1; staying 9 -9 -2 -1; stays -7 5 -5 3; step -11 -10 10 1; steps 2
-3 -8 2; stiff 10 -8 -1 -3; stiff> 3 -1 -2 -2; stiffness 7 -6 -1 0; still -7 6 -5 0; still> 3 -8 -4 5;
stinking 10 -2 -5 -4; stomach 10 -4 -3 -12; stone -3 1 -4 -2; stood -3 3 -3 -2; stop -1 0 -3 -6; stop> -2
4 1 -3; stopped -4 2 -2 -3; stopped> 0 0 -2 -5; stopping 1 3 -6 -3; stops -1 -4 -9 4; storm 7 -6 -1 0;
straight 5 -1 -4 -7; strap 4 -1 -1 -1; strap> 6 -3 -1 -2; streak 3 -1 -2 -1; street 4 -3 -1 0; strength
-17 9 -10 -5; stress 8 -2 -4 -7; stretch 1 1 -5 -3; stretch> -1 1 -4 -4; stretched 8 -8 -4 -2; stretches
-1 -3 1 -2; stretches> 4 -1 -5 -3; stretching 3 -5 0 -1; stretching> 3 -1 -4 -1; strike 1 0 0 0; strong 5
-17 7 -2; stuck 8 -3 0 -5; stuff 5 -5 -1 -4; such -6 -3 2 3; sudden -10 -18 -4 19; sudden> -2 -3 0 4;
suddenly -2 -22 -9 13; suddenly> 1 -9 -5 4; sugar -2 0 0 2; sun 5 -4 -1 -4; sunday -3 3 -3 -3; sunday> 2
0 -3 -3; sunrise 3 -3 -2 -3; super -1 3 -1 -4; sure 4 -4 -3 -5; sure> 12 -3 -7 -9; swamped 9 -8 -2 -8;
swear 9 -5 -10 -11; sweat -1 -5 -4 3; sweat> -2 -3 -2 2; sweating -9 -4 -2 7; sweating> -3 -5 -2 4;
sweaty 3 -2 -2 -2; swell -5 -11 6 -6; swelled -13 -9 14 -6; swelling -17 -9 18 -8; swole -10 -8 10 -3;
swollen -20 -6 22 -4; swollen> -4 -3 5 -1; table 4 -9 -6 2; tablets 3 -2 -10 -7; take 1 -7 4 -6; taking 0
-4 4 -8; talk -2 -3 -3 2; talked 3 0 -2 -1; tapped 4 0 -3 -6; target 2 -2 0 0; tax 7 -3 -5 0; tbh 6 -3 -1
-1; tbh> 5 -4 -1 -1; tea -3 1 -5 -1; teacher 8 -4 -3 -3; teacher> 2 0 -1 -1; team 10 -2 -1 -7; telephone
7 -7 -3 -10; tell -3 4 -3 4; telly -2 5 -6 -2; temp -10 9 -4 -3; temperature -3 5 -7 -5; ten 1 -1 -5 -2;
ten> 4 2 -5 -7; tender 8 -5 -5 -2; tennis 2 0 -1 -1; tent 9 -4 -4 -1; terrace 8 -4 -9 -5; terrible 0 -1
-3 1; test 3 -1 0 -2; texting 3 -3 -2 -2; th 4 -3 -2 -1; th> 2 -1 -1 0; than -1 1 4 -3; thank 9 -14 -2
-6; thanks 6 -3 -2 -2; thanks> 6 -2 -3 -2; that -2 -3 -4 2; that> 3 -7 1 2; the -2 0 -1 0; the> 6 -5 -6
-4; them 5 -1 2 -6; them> 5 -2 1 -3; then -1 -5 1 1; then> 3 -5 -2 -14; there -2 0 -1 1; there> -3 3 -4
3; these 3 2 -4 -8; these> 4 -3 -1 -2; they 0 1 -3 -3; thick -8 -4 7 -4; thigh -7 -5 2 -6; thigh> -2 4 1
-13; thighs 0 -3 -7 4; thing 0 3 -6 -3; thing> 8 -4 -1 -7; things -2 3 -3 -1; think -8 -7 4 4; think> 3
-5 0 -10; thinking 2 -1 0 0; third 2 -5 -5 0; thirds 7 -3 -2 -2; this -3 -3 1 1; this> 3 1 -2 -5; those 4
-3 -4 -4; those> 4 -1 0 -3; though -2 -3 6 -3; though> 3 -3 -1 -2; thought -2 -4 -2 3; thread 0 -1 3 -1;
three 5 3 -2 -7; three> 8 -6 -4 -1; threw 9 -7 -5 -2; throat 1 0 0 0; throbbing -16 -5 16 -8; throbbing>
-6 -2 6 0; throbs -11 -8 12 -7; through 3 -4 -2 -4; throwing 6 -6 -8 -9; thumb -7 8 -3 -10; thursday 5 0
-2 -4; thursday> 5 0 -4 -4; tight 4 -7 -2 2; tight> 5 -2 -3 -3; tightness 4 -2 -1 -1; tiles -3 -11 -8 10;
till -1 2 -1 -4; time 6 0 -4 -6; time> 2 1 -7 -4; times -6 2 0 -1; times> 0 3 -4 -3; timing 2 -1 0 0;
tingle -12 12 -5 -6; tingles -16 12 -8 -6; tingles> -8 6 -5 -4; tingling -23 21 -8 -3; tingling> -7 7 -2
-6; tingly -12 13 -7 -6; tiny -8 -4 1 -6; tired -2 -3 -6 3; tired> 1 1 -3 -10; to 1 -2 -2 -2; toast 4 -2
-5 -4; today 4 -6 0 -2; today> 6 -2 -4 -6; todays 0 -4 -2 0; toddler 3 -1 -7 -7; toe 3 3 -6 -8; toe> -8 8
-2 -5; toes -13 17 -6 -11; toes> -2 4 -3 -7; together -6 7 -1 -3; toilet -4 -11 -6 4; told 10 -8 -2 -1;
tomatoes 10 2 -4 -3; tomorrow 6 -3 -2 -1; tomorrow> 3 -2 -2 1; tongue -1 -16 -7 6; tonight 1 -5 0 -7;
tonight> 6 -2 -3 -1; tonite 7 -3 -3 -2; tonite> 3 -1 -1 -1; too 1 -4 -3 2; too> 2 -4 -1 4; took -1 -6 5
-3; totally 4 -1 -2 -1; touch 6 -12 3 -1; touch> -8 -1 8 -1; touched 4 -1 0 -3; touching 8 -9 -4 -4;
tough 8 -5 -1 -5; tough> 6 -1 -2 -5; tour 7 -6 -4 -2; tow -8 8 -5 -8; towel 7 -5 -3 -1; track 6 -11 4
-11; traffic 5 -4 -2 -1; train 5 -2 -2 0; training 7 -6 -6 -7; trains 2 -1 -2 0; tram -4 4 0 0; travel 5
-1 -4 -3; travelling 10 -5 -2 -6; travelling> 3 -1 -2 -1; tree 0 4 -1 -2; tried 4 -4 -5 2; trouble -7 -8
-4 9; trousers 0 2 -5 -3; truck 2 -4 -1 0; try 8 -7 0 -2; trying -8 12 -3 -6; tuesday -1 1 -3 0; tuesday>
-5 2 -4 4; tummy 12 -7 -4 -8; turn -2 -7 2 -1; turned 0 -5 1 -3; twang -6 -4 6 -5; twenty 5 -1 -2 -2;
twice -7 2 5 1; twig -7 0 8 0; twins 6 -4 -1 -6; twist -2 1 -2 -1; twisted -3 -9 3 -1; two 0 1 -5 -1;
two> 10 -7 -2 -4; type -1 2 -5 0; typing 1 -5 -4 -2; typo 1 0 0 0; tyre 7 -7 -1 -2; ugh 4 -2 -2 -1; um 4
-3 -1 -2; unannounced 3 0 -2 0; unbearable -18 -8 16 -11; under -8 -3 11 -9; understand 2 -1 -2 0; unreal
7 -4 -9 -5; unsubscribe 4 -4 -5 -4; until 2 6 -5 -3; up -4 1 4 -1; up> 5 -1 -3 -3; update 3 0 -1 -1;
upper 3 -1 -1 -1; upset 3 -2 -2 -4; urine -10 -7 -8 11; us 2 0 -1 0; used 2 -3 0 2; version 9 -6 -3 -7;
version> 5 -2 -2 -5; very 1 -1 -3 -1; vet 12 -1 -12 -3; video 2 -2 -2 -2; video> 5 -3 -1 -2; view 6 -6 -1
-2; village 2 -1 -1 -1; vision -5 -7 -5 7; vision> -9 -1 -2 9; visit 7 -4 -2 -6; visit> 4 -2 -1 -4;
visiting 3 -1 0 -5; visitors 14 -4 -2 -10; visitors> 1 0 -1 0; voice 5 -4 -3 -8; waist 9 -5 -2 -3; wait 7
-3 -3 -2; waited 2 -1 0 -1; waiting 7 -5 -1 -2; wake -9 7 -7 8; wakes -18 20 -7 -9; waking -8 9 -7 -5;
walk -13 1 9 -6; walk> -9 4 3 -12; walked 0 1 -3 -2; walking -7 6 2 1; wall -2 7 -6 -5; want 5 -7 -3 -1;
wanted 3 3 0 -6; ward 1 -1 3 -3; warm -4 -14 12 -5; warm> -2 0 3 0; was 3 -2 -2 -3; was> 3 -1 -2 -2;
washing 4 -6 2 -9; watch 6 -3 -6 -4; watched 0 0 -2 -2; watching 5 -2 -1 -2; water -5 0 1 1; way -12 -6
10 -5; way> 3 -14 -1 -2; we 7 -3 -1 -6; weak -24 12 -10 -3; weak> -14 -1 -8 4; weaker -5 5 -2 -2;
weakness -23 12 -12 0; weakness> -15 4 -8 0; weather 9 -4 -8 -8; wedding 9 -5 -1 -9; wee -10 -4 -7 6;
week 3 1 -3 -8; week> 5 -3 -2 -1; weekend -3 -2 -2 4; weekend> 0 -1 3 -4; weeks 3 2 -3 -4; weeks> 3 -3 0
-1; weight -11 -1 12 -8; weight> -5 -5 4 -3; weird -5 5 -9 -4; well -3 4 -4 -5; well> 8 -6 -5 -9; went -7
1 -3 7; were 0 0 -2 -3; wet -7 -5 -4 7; what 0 3 -2 -11; whatever -12 10 -5 -5; when -5 1 -6 1; whenever
-5 4 -3 -2; where 4 -8 -2 2; which 8 -7 -6 -3; whichever -8 3 -3 -2; while -4 3 0 0; who 4 -2 -2 -2;
whole -8 5 -4 3; why -1 2 -6 -3; wife -4 -9 -7 8; wifi 5 -5 0 -2; will -2 0 1 -8; window 2 -6 -6 1;
windows 3 -2 -4 -1; wipe -8 -11 -2 12; wire -1 3 -3 -3; wise 6 -4 -1 -1; wish 2 -2 -1 -2; with 0 1 -2 -3;
with> -1 2 -7 -6; without -10 7 -5 3; wk 5 -2 -2 0; woke -9 10 -5 1; woke> 10 -2 -9 -5; woken -11 11 -3
-3; won 0 -1 4 -6; wool -8 2 -6 2; woozy -15 10 -5 -7; words -14 -3 -1 15; words> 0 -1 -3 3; work 7 -3 -2
-3; work> 5 -1 -1 -3; worked 2 -1 -2 0; working 8 -5 0 -4; works 4 -2 0 -1; works> 7 -6 -2 -4; worried 1
-3 -2 0; worse 3 1 -5 -7; worse> 6 -5 -2 -3; worst -6 -13 7 -8; worth 5 -1 -4 0; would 4 -3 -4 -3; wrist
2 -5 2 -7; wrist> 2 -1 0 -1; wrists 3 -1 -2 0; write -3 -1 -2 3; writing 1 -1 1 -4; wrong -6 -1 -1 7;
wrote 4 -3 0 -2; x 4 -1 -1 -1; x> 5 -2 -1 -2; xx 9 -2 -3 -6; yeah 5 -4 -4 -3; year 0 1 -8 -2; years 4 -6
1 -10; yellow -2 -9 3 -3; yep 2 -5 -5 -2; yep> 6 -4 -4 -7; yes 6 -7 -2 -2; yes> 10 -9 -3 -3; yesterday -2
-4 0 -3; yesterday> -2 2 -5 -6; yet 10 -3 -4 -3; yet> 7 -1 -3 -3; yoga 11 -11 -1 -3; you 5 -3 -4 -3; you>
2 -1 -1 -1; young 4 -4 0 -2; your 8 -1 -1 -3; yours 5 -3 -2 -3; yours> 5 -4 -3 -3; yup 8 -4 -2 -7; yup> 4
-2 -3 -1; zap -5 5 -5 -5; zero 7 -6 -2 -3; zilch 5 -4 -4 -4; zoom 4 -1 -2 -1; ☕ 9 -7 -7 -7; ♀ 4 -3 -4 -3;
♀> 4 -3 -4 -3; ✅ 2 -3 -2 0; ✅> 5 -4 -4 -5; ✌ -4 5 -4 -4; ✔ 6 -4 -2 -2; ✔> 4 -1 -1 -1; ❌ 5 -3 -3 -3; ❌> 5
-4 -4 -4; ❤ 4 -4 -4 -4; ❤> 4 -4 -4 -4; 🎉 6 -2 -2 -2; 🎉> 7 -2 -2 -2; 🏖 5 -2 -2 -2; 🏼 6 -2 -2 -2; 🏽 4 -1 -2
-2; 🏽> 4 -2 -2 -2; 👋 5 -2 -1 -2; 👋> 5 -2 -1 -2; 👌 4 -4 -3 -4; 👌> 4 -4 -3 -4; 👍 7 -4 -2 -2; 👍> 6 -5 -2 -2;
👎 5 -3 -3 -3; 👎> 6 -3 -3 -4; 💀 2 -5 -4 -1; 💀> 2 -6 -5 -1; 💪 6 -4 -2 -3; 💪> 6 -3 -2 -4; 💯 6 -6 -6 -6; 🔥 5
-4 -4 -5; 🔥> 3 -3 -3 -3; 😂 7 -2 -3 -2; 😂> 6 -2 -1 -3; 😅 6 -4 -4 -5; 😅> 5 -2 -2 -2; 😊 4 -1 -1 -2; 😊> 4 -1
-1 -2; 😎 4 -3 -4 -4; 😎> 4 -3 -4 -4; 😕 5 -3 -3 -1; 😕> 1 3 -3 -1; 😖 4 -1 -2 -1; 😖> 5 -2 -3 -1; 😟 -3 2 0 -1;
😟> -3 2 0 -1; 😩 4 -2 -5 -2; 😩> 5 -3 -5 -2; 😬 1 1 -2 -1; 😬> 1 2 -2 -1; 😭 2 -3 -3 -1; 😭> 7 -3 -4 -5; 😰 -3 0
0 3; 😰> -3 0 0 3; 😳 -1 -1 2 0; 😴 4 -3 -4 -3; 😴> 4 -4 -4 -4; 🙈 5 -1 -2 -2; 🙈> 5 -1 -1 -3; 🙌 6 -4 -2 -2; 🙌>
6 -5 -1 -2; 🙏 7 -2 -2 -2; 🙏> 7 -2 -2 -3; 🤒 4 -1 -2 -1; 🤒> 4 -1 -1 -1; 🤦 4 -1 -2 0; 🤷 5 -3 -3 -4; 🤷> 4 -3
-3 -4
"""
"""Each entry: a word of at least three replies ("<" first, ">" last, "#" a number, "_" every reply), and its weights in
the order of `suspicion.LEVELS`; 5 is one natural logarithm of the odds."""
