"""Which words usually go with which warning sign. Written by `python -m tests.bench.doubting`, not by hand."""

WEIGHTS = """
! 7 -7 -2 -3; !> 3 -2 0 -5; # 6 -2 -3 -3; #> 5 -1 -2 -4; % 5 -2 -2 -1; %> 5 -1 -3 -1; & 0 -4 1 -5; ( 5 -3
-1 -1; ) 6 -4 -1 -1; )> 2 -1 -1 -1; + 7 -6 -3 -5; , 1 -1 0 -1; ,> 8 -7 -6 -6; - 8 -5 -2 -1; . 0 -1 -2 -1;
.> 3 -2 -1 -4; / 6 -1 -4 -2; 3 -4 4 -2 -1; 5:45 8 -6 -1 -3; 6 2 0 0 -1; 6:30 6 -6 -5 -5; 6:45 3 -1 0 -1;
7:30 6 -3 -1 -4; : 6 -4 -3 -4; <! 8 -6 -5 -2; <# 1 -5 0 -9; <, 12 -7 -9 -2; <. 11 -8 -3 -6; <: 5 -2 -2
-1; <? 3 -1 -2 0; <a 1 -7 -3 -5; <about 9 -7 -5 -6; <aching 5 -5 0 -1; <achy 6 -6 -3 -2; <affirmative 7
-4 -4 -6; <after 2 -7 -8 0; <all 6 -3 -7 -5; <already 1 -9 -3 0; <am 4 -8 -3 -3; <and 9 -8 -4 -7; <ankle
-8 -5 8 -4; <ants 0 5 -3 -5; <arm -6 6 -3 -12; <as 6 -5 -1 -1; <at 2 -2 -4 -8; <aye 4 -4 -2 0; <baby 5 -4
-2 -1; <back 2 -1 -1 -5; <bar 3 -1 -1 -1; <became 6 -9 -9 -7; <because -1 3 -7 -2; <been 9 -9 0 -2;
<before 8 -4 -6 -11; <better 5 -1 -2 -2; <between 6 -4 -1 -4; <big -3 -4 4 -2; <bit 3 -1 -2 -6; <black
-14 -3 6 -4; <blacked -5 -4 -3 4; <bladder -3 -6 -5 3; <blurred -5 -4 -2 6; <body 6 -1 -1 -4; <bonjour 3
-2 -1 0; <boss 3 -3 -2 0; <both -4 3 3 -2; <breathtaking 3 -2 -1 -2; <bro 1 -3 -3 -2; <broke 3 -3 -5 -3;
<bruh 4 -4 -2 -3; <bruise -3 -2 3 -1; <burned 2 -1 0 0; <burning -12 9 -6 2; <busy 4 -3 -3 -3; <but 9 -6
-9 -1; <buttock 7 -6 0 1; <by 4 -3 -2 -3; <calf -3 -6 4 -3; <calves 6 -5 0 -3; <can -6 0 1 -3; <cancel 4
-4 -5 -4; <change 2 -1 0 -1; <chest -1 -5 -5 3; <coach -3 -3 2 0; <complete 6 -2 -2 -2; <completed 9 -8
-3 -1; <could 1 2 -3 -3; <covid 8 -5 -3 -6; <day 4 -2 -2 0; <dead 12 -16 -1 -2; <dear 4 -1 -2 0; <did 7
-5 -2 0; <dizzy -8 8 -1 -3; <doctor -1 -1 0 1; <dog 11 -5 -16 -5; <doing 5 -4 0 0; <doms 5 -3 -4 -4;
<done 4 -3 -3 -1; <down 9 -6 -3 -5; <dull 2 0 0 -1; <dun 7 -5 -2 -3; <during 2 -5 -4 -7; <effort 4 -3 -2
-2; <electric -3 5 -7 -3; <ever -4 0 -6 2; <every 7 -6 -2 -3; <everything 1 0 -7 -4; <exam 4 -2 0 0;
<except 6 -4 -5 -5; <exercise 5 -2 -3 -6; <face -9 -3 -6 9; <fainted -8 -4 -2 9; <feel 4 -8 -1 3;
<feeling 2 0 -1 -6; <felt 2 -3 3 -9; <fever -5 -1 1 -8; <feverish -8 8 -4 -4; <fine 3 -1 -1 -1; <fingers
-13 13 -6 -4; <finish 7 -13 -2 0; <finished 4 -4 -5 -2; <finito 6 -5 -6 -6; <first 7 -4 -3 -7; <flu 4 -9
-2 -3; <food 4 -2 0 -4; <foot 2 -1 -3 -6; <for 7 -4 -1 -2; <forgot 4 -3 -2 -3; <fr 4 -3 -1 -2; <from 9 -5
-2 -9; <gave 9 -6 -8 -3; <get 2 -2 -2 -4; <going 12 -6 -6 -9; <good 5 -2 0 -3; <got 2 -5 -3 -7; <groin 0
-13 -4 2; <guests 3 0 0 -3; <guten 4 -3 -4 -3; <had 4 1 -7 -5; <half 7 -9 -8 -3; <hand -7 5 0 -3; <has 2
-4 1 -5; <have 1 -6 -4 -3; <head -2 1 -8 1; <health 1 0 -1 -1; <heard -4 -1 4 -1; <heart -2 -6 -4 4;
<heavy 2 -3 -2 -1; <held 4 -3 -1 -2; <hello -3 0 -5 2; <here 6 -1 -3 -3; <hey 7 -1 -1 -6; <hi 6 -5 -2 -2;
<hip 4 -2 -3 -6; <hips 9 -8 -4 -4; <hot 7 -16 3 -1; <hurts 4 -4 -13 -5; <i 0 -5 -1 -1; <ich 2 -1 -1 -1;
<ill 6 -1 -3 -2; <in 9 -2 -4 -14; <inbox 3 -3 -2 -1; <is -8 -3 7 -8; <it 6 -3 -5 -7; <ja 4 -3 -1 -1; <jaw
-13 -8 -8 14; <just 5 -3 -4 -5; <kid 3 -1 -1 -2; <kindly 7 -3 -3 -3; <knee 5 -8 -2 -6; <knees 7 -7 -3 -3;
<last 3 1 -5 -4; <late 4 -3 -1 0; <later 9 -6 -3 -2; <left 3 -11 -4 0; <leg 1 -1 0 -7; <legs 1 3 -5 -13;
<light -7 5 -3 -3; <lighter 5 -3 -7 -1; <like -8 5 -1 -2; <little 6 -5 -1 0; <long 2 -2 0 0; <lost -2 -1
-7 0; <lowkey 3 -1 0 -1; <made 5 0 -2 -3; <managed 8 -3 -5 -7; <mat 6 0 -5 -1; <migraine 6 -2 -2 -3;
<missed 4 -2 -2 -1; <morning 3 -6 0 -8; <most 8 -2 -2 -4; <move 6 -6 -4 -3; <muscle 2 -1 -1 0; <must 10
-6 -8 -10; <my -3 -2 -3 2; <nah 4 -4 -4 -4; <nearly 1 -6 -5 0; <neck 4 -3 -2 -3; <neither 2 1 -2 -6;
<never 3 -4 -1 -3; <new -1 -2 -2 1; <next 4 -2 -1 -4; <ngl 7 -4 -1 -3; <night -7 11 -4 -4; <no 3 -2 -1
-1; <nope 6 -5 -2 -7; <not 10 -5 -3 -7; <nothing 7 -2 -1 -4; <notice -4 6 -3 -5; <noticed -3 3 -1 -7;
<numb -8 1 -8 5; <numbness -8 6 -8 -2; <of 6 -5 -3 -3; <ok 9 -7 -2 -1; <okay 5 -4 -1 -2; <on 7 -10 -3 2;
<one -2 -7 2 -2; <only 11 -6 -8 -6; <outer -3 8 -4 -1; <overslept 7 -2 -3 -2; <pain 4 -3 -5 0;
<palpitations -4 -9 -2 7; <part 8 -5 -7 -2; <passed -7 -4 -6 6; <pause 7 -3 -3 -1; <phone 4 -3 -1 -6;
<physio 3 -3 -2 -3; <pins 0 1 -4 -2; <please 7 -2 -2 -3; <popped -6 -6 9 -4; <pose 2 0 0 -1; <power 9 -4
0 -6; <pressure -1 -4 -3 4; <pulled 0 -9 2 -9; <put 4 -4 -4 -2; <quit 4 -2 -2 -3; <qx 3 -7 -3 -4; <ran 3
-3 -1 -1; <rest 5 -1 -3 -1; <right -7 -6 0 5; <room -6 7 -6 -8; <routine 1 -7 0 6; <said 5 -4 -1 0; <same
7 -4 -1 -3; <saw -1 -6 -8 4; <session 6 -2 -2 -4; <set 6 -6 -4 -2; <severe -5 -4 3 0; <sharp 4 -8 8 -3;
<shooting -8 7 -5 -3; <shorter 7 -6 -3 -3; <shot 8 -4 -3 -3; <shoulder -4 -6 6 -2; <show 5 -4 -4 -1; <si
6 -6 -5 -3; <since 1 -8 -4 1; <sir 6 -2 -1 -1; <skipped 6 -3 -3 -4; <slept 8 -7 -1 0; <slight 6 -1 -5 -3;
<slipped -4 0 4 -4; <slurred -5 -5 -2 7; <so 1 -6 -4 0; <some 11 -14 5 -3; <something -4 -11 3 -5; <sore
8 -6 -2 -1; <soreness 3 -5 3 -4; <sorry 5 -1 -2 -1; <speech 1 -1 -2 -1; <started 10 -5 0 -6; <stiff 1 -1
0 0; <still 5 -4 -3 -8; <stomach 4 -3 -3 -2; <stop 12 -10 -8 -5; <stopped 5 -10 -1 -2; <stretch 1 -1 0 0;
<sudden -5 -8 -4 8; <suddenly 2 -5 -2 1; <swamped 2 -1 0 0; <swollen -5 -1 6 -1; <take 3 -2 -5 -2;
<tender 4 -2 -3 0; <thanks 8 -6 -3 -5; <that 10 -1 -2 -5; <the 2 -5 -4 -4; <there -3 0 -1 -5; <thigh -4
-9 13 -1; <this 3 -1 -7 -8; <thought 6 0 -3 -4; <thread 1 0 0 0; <three 2 0 -1 -1; <threw 8 -5 -6 -1;
<throbbing -5 -4 3 -2; <tight -3 -2 -2 3; <tightness 3 -2 -1 0; <tingling -10 1 -3 1; <tingly -4 8 -2 -4;
<to -6 2 2 3; <today 13 -12 -2 -8; <toes -10 7 -2 -4; <tomorrow 7 -3 -3 -5; <too 4 -7 0 -7; <took 7 -3 -6
-3; <travelling 4 -1 -1 -1; <tried 7 -2 -6 0; <twice 7 -5 -6 -4; <two 4 -3 -1 -2; <um 0 1 -1 -3;
<unbearable -7 -7 7 -6; <unsubscribe 5 -4 -5 -4; <up 0 0 -4 0; <very 6 -2 -2 -4; <wakes -3 5 -4 -1;
<walked 3 -2 -2 -2; <want 2 -4 -1 2; <was 3 -7 -4 0; <watched 5 -5 -2 -2; <way 9 -10 -8 -7; <we 3 -2 0
-1; <weak -1 7 -5 -7; <weakness -8 6 -5 -5; <week 3 -2 -2 0; <weight -1 2 -8 -5; <well 8 -7 -1 -4; <went
0 4 0 -12; <wet -9 -3 -3 6; <what -11 -1 4 2; <when 3 -2 -3 -7; <where 5 0 -1 -4; <while 7 -6 -6 -7;
<whole 4 -2 -2 0; <wife 1 0 0 -1; <wifi 3 -3 -1 -2; <will 9 -4 -7 -1; <with 0 -7 -2 -4; <without 8 -4 -2
-2; <woke -3 6 -14 -9; <words -2 -1 -3 3; <work 6 -4 -2 0; <worse 8 -9 -6 -3; <xx 4 -2 -3 0; <yeah 6 -5
-5 -3; <yep 2 -6 -4 -2; <yes 4 -4 -2 -2; <yesterday 5 -3 -2 -2; <you 1 -3 -2 3; <yup 8 -3 -2 -7; <zero 3
-1 -1 -1; <zilch 6 -5 -5 -5; <✅ 6 -4 -4 -6; <❌ 6 -4 -4 -4; <👍 7 -2 -3 -3; <👎 6 -4 -3 -4; <💪 6 -4 -4 -5;
<🤒 4 -1 -2 -1; = 5 -3 -2 -1; ? 1 0 -2 -5; ?> 0 1 -2 -5; _ 10 -4 -4 -4; a -3 -2 -1 -1; a> -5 5 -8 -2; able
0 -8 0 2; about 5 -4 -2 -1; about> -2 -2 -4 4; accident -7 -9 -7 7; ache 1 0 -8 -5; aches 3 -2 -9 -2;
achilles 4 -4 0 0; aching 7 -4 -11 -6; achy 11 -5 -3 -3; achy> 11 -6 -4 -3; across 6 -3 -3 0; action 1 0
0 0; actually 7 -6 -2 -3; advanced 5 -1 -1 -3; af -2 4 -2 -4; af> 5 -4 -1 -1; affirmative 7 -4 -4 -6;
afraid 8 -7 -2 -1; after -6 0 0 -1; after> 3 -5 -6 1; afternoon 2 -1 0 -1; afterwards -8 4 -3 3; again -2
7 -7 -6; again> 2 -2 -6 -1; age -3 -15 -6 4; age> 9 -1 0 -7; ago -2 -9 -3 1; air -8 -7 -2 9; airport 9 -5
-2 -16; alarm 5 -2 -1 -3; all -1 -1 1 -2; all> 5 -2 -2 -7; almost 0 -5 -1 4; along -9 9 0 0; already -1 3
-6 -3; also -3 -3 0 3; although 8 -2 -1 -6; always 1 3 0 -5; am -6 1 -7 3; am> 0 0 -3 -9; amazing 6 -5 -6
-5; an -8 1 0 2; and -6 1 -1 2; and> 9 -11 -3 -10; ang 4 -1 -1 -4; ankle -8 -2 7 -13; ankle> 0 -3 -5 -4;
ankles -8 -6 7 -3; another 6 -3 -2 -7; ants -8 10 -4 -8; any -3 -9 6 -6; any> 8 -1 -3 -6; anymore 2 1 -4
-1; anymore> 6 -2 -1 -3; anything -2 -7 -7 7; anyway -4 0 2 -1; anyway> 2 -2 -5 0; anywhere 5 -4 -2 -4;
apart 7 -8 -1 -5; app 8 -2 -1 -5; appointment 10 -7 -2 -6; appointment> 3 0 -1 -1; are 1 1 -5 -4; are> 0
-1 -1 1; area -6 -6 -4 7; arm -10 2 -1 0; arm> -3 0 3 -5; arms 7 -5 -4 -5; around -1 -8 -3 7; arrive 5 -4
-1 -5; arrived 8 -5 -3 0; arthritis 6 -5 -1 -2; as -6 8 -6 -5; ask 4 0 0 -4; asked 3 -3 -2 -3; asking 4
-9 -4 -3; asleep -4 5 -7 -2; asleep> 1 5 -7 -11; at -2 0 -6 2; at> 1 0 0 -1; ate 5 -4 -4 -4; awake -6 7
-3 -3; away -8 0 5 -8; away> -3 3 -4 -4; aye 4 1 -3 -5; baby 12 -9 -3 -6; back -6 3 0 -5; back> -1 -4 2
-6; bad -3 -2 -11 1; bad> -3 -8 -3 3; badly -3 4 -2 0; bailed 7 -6 -7 -7; balance 7 -3 -4 -3; balcony 7
-6 -2 -4; ball -6 -3 6 -4; balloon 0 -6 6 -6; balloon> -5 -3 6 -5; band 6 -5 -2 -4; bank 4 -2 0 -3; bar 7
-3 -2 -8; bathroom -7 -7 -5 7; battery 7 0 -1 -5; be 9 -2 -1 -4; beach 6 -5 -5 -5; beat 1 -5 -5 0;
beating -13 -2 3 12; beats -10 -2 -2 9; beats> -5 -3 -1 5; became -3 -4 -7 4; became> -5 6 -3 -3; because
3 0 -3 -7; become -2 2 0 -6; bed 1 0 -4 -6; bed> 4 -2 -1 -1; been -2 2 -10 -3; been> -4 1 -5 4; before -6
-2 -3 5; before> -7 0 -6 8; behind -4 -14 -1 3; below -4 -11 0 3; bend -5 8 -2 -13; bend> 3 -2 -2 -4;
bends 3 -4 -2 -3; bent -2 -1 0 1; best 4 -3 0 0; better 3 -5 -5 1; better> 14 -7 -8 -8; between 8 -16 -2
13; beyond 5 -1 -2 -3; big -6 2 6 -10; bigger -8 -4 8 -1; bike -3 -4 -3 5; bill 3 -3 -2 -4; bin 0 1 -1
-1; birthday -2 3 -4 -4; bit -2 0 -9 1; bit> -3 2 -2 0; bits 8 -11 -4 4; black -9 -11 3 4; blacked -12 -5
-3 10; bladder -9 -5 -4 8; blood 3 -3 -5 -3; blown -7 -4 7 -2; blue -11 -8 6 -3; blue> -8 -6 1 0; blurred
-13 -5 -4 13; blurry -7 -3 -3 5; board 3 -2 -1 -1; body 4 -18 -4 5; body> -7 -6 -3 7; boiled 7 -5 -1 -1;
boiler 1 0 0 -1; bone -2 0 -8 0; bonjour 3 -2 -1 0; boots 2 0 -1 -4; bored 9 -4 -4 -6; boring 8 -1 -5 -3;
boss 7 -4 -4 -7; boss> 3 -1 -2 -1; both -2 2 -1 -6; bothered 3 -2 -1 -3; bottom -6 -3 -7 6; bowel -6 -3
-5 4; bowels 1 -5 -2 -1; box 8 -7 0 -1; boxes 2 -1 0 -1; brain 1 -1 0 0; break 8 -5 -2 -2; breakfast 6 -6
-3 -4; breakfast> 2 -2 -2 2; breast -3 -5 -6 7; breastbone -16 -9 -9 13; breath -13 -5 -7 11; breath> -5
-3 -3 3; breathe -15 -12 -11 17; breathe> -6 -3 -4 7; breathing 7 -1 -9 -7; breathless -13 -8 -7 12;
breathlessness -10 -6 -8 11; breathtaking 3 -2 -2 -2; bridge 4 -1 -5 -8; bridge> 6 -6 -1 -3; bro 4 -5 -5
-4; bro> 4 -5 -4 -4; broke 6 -6 -6 -3; broken 10 -9 -13 -8; brother -4 -12 -9 3; bruh 4 -4 -2 -3; bruise
-17 -14 21 -6; bruise> -6 -2 7 -2; bruised -12 -6 11 -8; buckled -10 0 10 0; buckling -12 -5 11 -3; bug 3
-1 -3 -1; bug> 1 -1 0 0; bum -9 8 -8 3; burned 3 -3 0 -2; burning -12 12 -4 -4; burst 4 0 -2 -2; bus -3
-7 3 -3; bus> 3 0 -3 0; busy 5 -1 -1 -1; busy> 7 -1 -2 -3; but -1 2 -2 -3; but> 6 -2 -7 -14; butt 5 -3 0
-1; buttock -8 -4 -11 9; buttocks -2 -6 0 7; button 9 -2 -1 -10; buzzing -17 10 -8 -6; by 2 0 -3 -2; cake
-2 3 -3 -5; calf -10 -1 9 -12; calf> 1 1 -1 -7; call 3 -3 -2 -1; call> 3 0 -2 -2; called 3 -1 -1 -1;
calls 9 -6 -2 -4; calm 3 -3 -2 -3; calories 5 -4 -3 -4; calves 3 -2 -5 -4; came -4 0 -6 1; came> 7 -1 0
-6; can -7 -3 0 3; cancel 5 -4 -5 -4; cancel> 5 -2 -1 -4; cancelled 4 -4 0 -1; candle 9 -9 -2 -4;
candlelight 6 -7 -1 -6; car 5 -5 -6 -2; carpet -1 -4 -3 2; carried 4 -2 -2 -1; carry -5 -11 9 -7;
carrying 1 -2 1 0; cat 6 -3 -5 -6; catch -2 -2 -4 3; caught -3 -1 0 3; cause -7 -2 0 8; ceiling 5 -3 -4
-2; chair 4 -3 -6 -2; chance 5 -3 -1 -1; chance> 3 -3 -2 -3; change 8 -5 -4 -3; changed 11 -2 -4 -6;
chest -16 -14 -7 21; chest> -5 -4 -1 9; child 3 -1 -5 -11; children 3 0 0 -3; choir 8 -6 -5 -1; church 4
-6 -3 -3; circles -8 2 5 -11; class 5 -2 -1 -2; clean 6 -3 0 -3; climb -6 -6 2 4; climbing -6 -3 -4 7;
clock 7 -2 -3 -6; cm 6 -4 0 -1; coach 6 -8 -1 -3; coach> 7 -4 -1 -3; cobra 9 -6 -2 -4; coffee 7 -7 -2 -5;
coffees 8 -4 -4 -3; cold 5 -7 -5 0; cold> 2 -2 -1 -1; come 3 -9 -5 4; comes -11 -6 0 4; comfortable 5 -4
-4 -4; coming -8 9 -1 -1; company 2 -2 0 0; complained 4 -1 -3 -1; complete 4 -1 -3 -2; complete> 1 1 -1
-3; completed 1 2 -4 -5; completed> 3 -7 -2 -5; completely 8 -9 -4 -5; constant -7 8 -7 -7; constant> 9
-8 -4 -4; constantly -3 3 -3 -3; control -17 -8 -4 15; cooked 3 -1 0 -1; cork -4 0 5 -2; corner -3 -2 -3
3; correction 5 -3 -1 -3; cotton 1 1 -5 0; couch 6 -5 -1 -2; cough 12 -8 -2 -2; could 0 -6 -2 4; count 7
-4 -5 -4; couple -2 2 0 0; cousin 2 -1 -1 -1; cousins 7 -10 0 -7; covid 8 -5 -3 -6; cow -5 4 -1 -4; crack
-13 -5 10 -6; cramp 4 2 -7 -9; crawling -9 8 -5 -4; crazy 5 -9 0 -3; crazy> -3 -5 3 -2; cried 5 -4 -2 0;
crushed 4 -3 -1 -2; crushing 3 -6 -8 2; cup 2 -10 -3 3; cup> -4 -3 0 4; cups -3 4 -5 -5; current -4 5 -4
-7; curtain -3 -7 -1 9; curtains 2 -1 -1 -1; cut 8 -10 -2 -2; cut> 2 -2 0 0; dad 6 -5 0 -4; daily 2 -1 -1
-1; dark -2 -5 -2 4; daughter -3 -6 -3 5; day -2 -3 4 -6; day> 4 1 -5 -9; days -3 3 -6 0; days> 8 -6 -2
-2; dead -2 6 -10 -8; dead> 1 4 -5 -9; deadline 10 -5 -3 -7; deadlines 12 -10 0 -1; dear 2 -1 -2 2; dear>
6 0 -2 -5; deep 7 -3 -1 -7; degrees -1 0 1 -5; delayed 1 0 0 0; dentist 1 -2 -3 1; desk 3 -3 -2 0;
diagnosed 9 -7 -7 -8; diagnosed> 4 -3 -3 -5; did 3 -5 -2 -2; did> 7 -4 -5 -7; died 6 -4 -1 -4; diet -1 1
-4 -8; different 3 -1 0 -2; difficult 7 -2 -1 -6; difficult> 4 -3 0 -2; digging 3 -1 0 -1; dinner 6 -5 -3
-2; dinner> 6 -6 -4 -2; dizzy -26 23 -7 -8; dizzy> -8 6 -4 -5; do 1 -3 -5 -4; do> 5 -6 -2 -3; doctor 4 -3
-8 -5; does -8 1 1 0; does> -13 -1 -6 2; dog 0 -6 -11 2; doing 0 1 -3 -3; doing> 10 -10 -2 -11; doms 6 -7
-4 -3; done 5 -2 -3 -3; done> 7 -3 -4 -7; door 3 -8 -3 -3; doorbell 12 -8 -3 -5; double -9 -13 -1 8; down
-4 2 -1 -3; down> 1 -5 3 -1; downs -4 5 -1 0; downward -1 0 -1 -2; drank -2 2 0 -2; drill 1 -5 -1 3;
drive 7 -5 -2 -9; drooping -17 -4 -4 7; drooping> -6 -4 -3 4; droopy -7 0 -2 7; drop -6 8 -4 -3; dropped
3 -6 4 -4; dropping -4 6 -4 -5; drum 4 -9 0 -7; drunk -1 -5 -1 5; due 4 0 0 -4; dug 5 -3 -2 -5; dull 12
-10 -4 -1; dun 7 -5 -3 -3; during -7 5 -2 -1; dusted 3 -3 -2 -3; dusted> 3 -3 -3 -3; e 5 -4 -4 -4; each 1
1 -1 -2; earlier 4 -4 -3 -5; early 8 -5 -6 -3; early> 4 -2 -1 -3; ease -7 8 -3 -6; ease> -3 3 -1 -5;
eases -2 5 -3 0; easier 9 -3 -9 -2; easter 8 2 -3 -2; easy 5 -1 0 -3; effort 5 -3 -2 -1; eggs 3 -1 0 -4;
eight 3 -2 -4 4; either 7 -3 -3 -1; either> 6 -3 -2 -2; elastic 3 -5 4 -6; elbow 1 -2 -1 -6; elbow> 4 -5
-2 -3; electric -10 8 -5 -8; electricity -5 4 -4 -3; elephant 0 -2 -3 4; else 2 2 -1 -3; else> 2 -2 -3
-3; elsewhere 9 -9 -1 -1; elsewhere> 3 -2 -1 -2; embarrassing -7 -6 -1 7; emergency 3 -2 -2 -1; empty 1 0
0 0; end -1 -4 -6 0; end> 1 1 -6 -9; ended 5 -2 -1 -3; energy 9 -10 -6 -7; energy> 2 -1 0 0; english 4 -3
-3 -2; enough 7 -5 -8 -8; entirely 3 -3 -1 0; even -2 -3 -4 4; evening 0 -10 0 -1; evening> 5 -1 -4 -5;
evenings 3 -3 -3 -1; ever -10 4 7 -5; every -5 6 -5 -2; everything -1 -1 -5 0; everything> 6 -13 3 1;
everywhere 5 -4 -2 -1; exactly 1 0 0 0; exam 3 -3 -1 -6; exam> 2 0 -1 0; exams 7 -6 -6 -5; except 9 -6 -4
-6; exercise 1 -1 -3 -4; exercise> -4 -1 2 -3; exercises 5 -6 -3 -4; exercises> -4 4 -7 -3; extra 7 -7 0
0; eye -9 -6 0 13; eye> 0 0 -1 2; eyes 3 -1 -1 -3; eyes> -6 -1 -2 6; face -4 -16 -5 9; fainted -18 -10 -7
20; fainted> -8 -3 -5 8; fait 5 -3 -2 -4; fall -5 -1 4 -7; falling -2 2 0 0; fam 8 -2 -7 -2; family 7 -4
-2 0; far 6 -5 -4 -1; fasting 2 -1 0 0; fat -1 -5 9 -1; father -11 -9 -4 11; fave 5 -6 -5 -4; favourite 5
-4 -11 -5; fed 3 -3 -2 -4; feel -6 2 -5 2; feeling -3 3 -8 -2; feeling> 5 -7 -3 1; feels -5 5 -4 -3; feet
-8 9 -5 -7; feet> -5 5 -2 -2; fell -2 1 -3 3; felt -10 0 1 4; felt> 4 -6 -4 1; fence 6 -1 -4 -3; fever
-11 12 -4 -13; feverish -6 7 -4 -6; few -11 -7 -5 6; film 4 -3 -6 -7; finally 7 -5 0 0; find 4 -1 0 -2;
fine 4 -4 -6 -5; fine> 0 -1 -6 -1; finger -4 10 -8 -9; fingers -8 12 -4 -11; fingers> 1 -1 -3 -5;
fingertips 0 2 -1 -2; fini 6 -5 -5 -4; finish 1 -3 -4 1; finish> 4 0 -13 -5; finished 4 -1 -3 -4;
finished> 8 -2 -4 -6; finito 6 -5 -6 -6; fire 5 -3 -1 -3; first 7 -3 2 -8; fish 2 -4 -9 3; five 10 -7 -6
-6; five> 2 0 0 -2; flat 10 -3 -3 -4; flexor 7 -7 -7 -8; flight -4 0 1 0; flooded 6 -4 -1 -3; floor -1 2
-7 0; floor> -4 -1 -5 4; flow 2 1 -3 -4; flu 8 -3 -6 -9; flu> 5 -4 -2 -2; fluttering -8 -5 -4 7; fold -6
6 -3 -1; fold> -2 -6 1 2; folds -9 3 9 0; food 4 -2 0 -3; foot -16 11 3 -13; foot> -5 2 2 -5; football 2
-3 2 -1; football> 0 -3 3 -3; footy 6 -5 -1 -3; for -3 3 -7 0; force -11 -6 -9 8; forearm 6 2 -2 -3;
forget 5 -1 -2 -1; forgot 13 -4 -3 -12; forgot> 7 -1 -2 -6; forward -5 6 -3 0; found -5 -1 -3 5; four 7
-4 -3 -3; four> 7 -3 -1 -3; fourth 6 -1 -5 0; fr 6 -4 -2 -3; free 8 -3 -1 -3; free> 6 -2 -2 -2; friday 1
2 -2 -7; friday> 4 -3 -1 -4; fridge -3 3 -2 -2; frog -1 -2 0 3; from 0 1 -3 -2; front 3 -1 0 -1; frost 10
-1 -8 -3; full -2 -10 -2 3; full> 6 -1 -3 -4; fully 4 -6 -7 -2; fun 3 -2 -1 -1; function 1 0 -1 0;
funeral 13 -1 -2 -12; funny -5 -4 -4 5; further 11 -6 -2 -6; gaming 2 -1 0 0; garage 6 -1 0 -4; garden 0
-10 -4 4; gardening 6 -4 -1 -2; gas 3 -2 -1 -1; gasping -8 -4 -6 8; gave -4 -6 7 -10; get -3 7 -7 -5;
get> 10 -8 -4 -8; getting 2 -4 -2 -4; give 5 -5 -3 0; gives -14 -8 12 -5; giving -7 -3 8 -3; glasses 5 -1
-1 -4; glute -1 1 -2 -9; glute> -3 6 -6 -1; glutes 11 -2 0 -10; go -9 5 6 0; go> 4 -2 -2 -4; god 4 -2 -3
-1; god> 4 -1 -1 -1; goes -10 -1 4 3; goes> 5 -3 -7 -3; going -6 -1 -6 6; going> -4 5 -2 -3; gone -1 2 -5
-3; gone> 0 3 -6 -2; good 7 1 -4 -5; good> 8 -7 -1 -1; gorgeous 10 -3 -5 -6; got -4 3 -4 -3;
grandchildren 8 -5 -2 -1; grandkids 3 -3 -1 -4; grandson 4 -4 -3 -7; grapefruit -3 0 3 0; great 10 -5 -6
-2; great> 9 -4 -1 -5; grip -11 10 -6 -8; grippe 11 -8 -1 -4; groin 1 -18 2 13; groin> -6 -7 2 -3; guests
8 -1 -1 -7; guests> 4 -1 -1 -1; guten 4 -3 -4 -3; gym 10 -6 -6 -11; had -1 -4 -6 4; had> 5 -4 -6 -5; haha
6 -3 -3 -2; haha> 6 -3 -2 -2; half -3 -3 -2 3; half> 3 0 -5 -8; halfway 1 -2 -1 -6; halfway> 2 -15 -1 -5;
hamburg 6 -3 0 -3; hamstring -3 -8 5 -6; hamstring> -3 0 4 -2; hamstrings 6 -2 -1 -2; hand -11 12 -2 -8;
hand> -6 7 -4 -6; hands -8 8 -4 -9; hanging -11 -3 -5 10; hanging> -6 -1 -4 8; hangover 6 -1 -2 -3; hangs
-5 0 5 4; happen 5 -1 -2 -3; happened -3 -1 -2 -1; happy 8 -7 -1 -6; happy> 3 0 -2 -1; hard 6 -4 -6 -2;
hard> 7 0 -3 -4; hardly -9 -10 7 0; harvest 4 -1 -1 -1; has -4 -3 1 -1; have -3 4 -2 -5; having -1 1 -2
-2; he 3 -2 -3 1; head -8 9 -9 -4; head> -1 -2 -3 3; headed -9 7 -3 -6; health 10 -2 -3 -6; hear -6 -6 6
-2; heard -5 -7 7 -6; heart -4 -11 -10 10; heartbeat -8 -7 -1 4; heating 6 -5 0 -3; heavy 1 -7 -2 5;
heavy> -1 -3 -3 2; hecho 3 -2 -2 -2; heel -8 -1 2 -7; heel> -13 3 -1 -5; held 5 -2 -1 -5; hell 8 -7 -1 0;
hello 3 -3 -6 -2; help 6 -9 -7 -1; help> 2 -6 -7 0; helped 7 -2 -1 -4; helps -8 8 -2 0; her 11 -9 -3 -7;
her> 11 -6 -6 -5; here 5 -2 -4 -7; here> 5 -11 -3 -4; hey 7 -2 -1 -5; hi 6 -5 -2 -2; hike 6 -5 0 -1;
hike> 2 0 0 -2; hill 6 -5 -2 -1; him 10 -2 -1 -6; hip -4 3 1 -8; hip> -3 0 -1 -7; hips -4 6 -2 -4; hips>
8 -2 -1 -7; his -1 -6 5 -15; hit -1 -3 -3 3; hold -5 1 3 0; holding 8 -4 -9 -1; holds 1 0 -1 0; holiday 7
-6 -2 -1; home 7 -5 -1 -1; home> 4 -1 -1 -2; honest 6 -2 -1 -4; honestly 6 -5 -2 -5; hopping -9 -8 8 -7;
hospital -2 -7 -4 6; hot -4 -2 3 -13; hot> -1 -5 2 -2; hotel 12 -6 -5 -1; hour 4 -2 -1 0; hour> -10 7 -1
-1; hours 3 0 -2 -4; hours> 0 2 0 -2; house 5 -3 -1 -2; house> -2 3 -1 -1; how -1 3 -1 2; however 4 2 -3
-4; hr 7 -3 -2 -1; hrs 8 -8 -1 -7; hurt 6 -4 -3 -3; hurt> -8 -5 4 -5; hurting -2 6 -8 -4; hurts -3 4 1
-3; hurts> -4 2 -7 1; husband -4 -6 0 6; i 0 -3 -3 0; i> 7 -9 -8 -9; ich 2 -1 -1 -1; id 2 -1 0 0; idea -3
2 3 0; if -3 -3 3 -5; ill 8 -3 -3 -2; ill> 8 -5 -4 -3; impossible 7 -3 -3 -3; in -2 0 -2 0; in> 4 -3 -1
-3; inbox 3 -3 -1 -1; indoors 7 -8 -2 -7; inner -1 -4 -2 3; inshallah 4 -3 -2 -2; inshallah> 4 -3 -2 -2;
inside -3 -8 4 -3; instead 10 -7 -5 -4; instead> 3 -3 -4 -2; internet 6 -5 -3 -6; into -3 3 -9 0;
irregular -11 -5 -6 11; irregularly -3 -2 -3 3; is -3 -1 0 0; is> 4 -1 -9 -6; it 0 -2 0 -5; it> -3 -3 6
-1; itself 0 -3 -9 1; itself> -11 8 -5 3; ja 4 -3 -1 -1; jar -3 3 -2 -3; jaw -7 -7 -4 5; jaw> -2 -3 -2 6;
jelly 2 -5 2 -2; job 3 -2 -1 0; joined 9 -8 0 -6; joint -13 3 5 -6; jumbled -2 0 0 2; jump 7 -2 0 -6;
jumped 4 -3 0 -4; jumping -7 0 0 7; june 7 -7 -3 -3; just 2 -8 -2 -1; k 4 0 -1 -6; keep -8 4 -1 0; keeps
-11 3 4 0; kept -1 2 -7 -6; kettle 11 -5 -5 -8; kg 10 -4 -10 -2; kicked 1 -7 1 -4; kid 14 -14 -2 -3; kids
4 -4 -5 -5; kids> 8 -7 -5 -6; killer 2 -1 -1 0; kilos -6 6 -1 -4; kind 1 -3 2 0; kindly 7 -2 -2 -2;
kitchen -10 -9 -3 8; kitchen> 1 -2 2 -2; km 4 -10 0 -4; knee -1 -5 6 -10; knee> 1 -2 -3 -6; kneeling -2
-2 5 -1; knees 4 -12 3 -7; knees> 3 -1 -1 -1; knitting 2 -2 0 0; know 0 -2 3 -1; know> -3 -1 -3 3; ladder
-3 0 2 -3; last 1 -6 3 -2; last> 5 -1 -4 -4; late 7 -5 -1 -7; late> 4 -4 -1 -1; later 5 -2 -4 -6; later>
7 -2 -4 -2; laughed 4 -2 -2 -4; laughing 4 -1 -1 -3; laughing> 0 -2 -3 1; law 9 -2 -3 -12; lay 0 4 -6 -5;
lazy 8 -2 -3 -4; leave 2 2 -3 -3; leeds 2 0 -2 0; left -1 0 -1 -1; left> 4 -2 -6 -2; leg -11 6 3 -9; leg>
-11 1 0 -4; legs -4 -1 -6 0; legs> -8 0 -3 4; less 2 1 -3 -7; let 6 -1 -2 -4; level 10 -5 -5 -6; licking
-4 -1 0 4; lie 0 3 -4 -5; life 2 -3 -5 0; lift 3 -1 -6 -2; lifting 10 -7 -3 -11; light -7 6 -3 -3; light>
8 -2 -1 -9; lighter 10 -4 -10 -4; lighter> 11 -3 -7 -6; lightheaded -14 13 -6 -5; lightning -11 10 -4 -8;
lights -7 -6 3 4; like -1 1 -2 -2; liked 1 0 0 -1; lil -6 7 -2 -7; line 2 -2 0 -2; list 7 -4 -5 -3; list>
6 -4 -4 -2; listen 2 0 0 -2; listening 4 -3 -1 -1; literally -4 -1 -2 4; little 4 3 -4 -6; living 2 -2 0
-1; load -2 -9 8 -8; loads -5 7 -4 -3; lol 1 -2 -3 -2; lol> 7 3 -1 -11; long 2 1 -5 -8; longer 7 -5 -5 0;
loo -3 -4 1 1; look -3 -2 -5 2; looked 8 -1 -5 -9; looks -6 0 6 0; loose 11 -5 -2 -12; lose -4 3 -1 0;
loser 4 -2 -2 -3; losing -10 3 -6 0; loss -6 13 -14 -8; lost -9 3 -6 4; lot 4 0 -3 -5; lot> 3 -1 -4 -3;
loud -7 -5 8 -5; love 6 -1 -3 -6; loved 3 0 0 -2; lovely 10 -9 -2 -8; lovely> 3 -2 -2 -2; low 1 -4 -2 2;
lower 5 -3 -2 -5; lowkey 2 -1 0 -1; lunch 7 -5 0 -5; lunch> 2 1 0 -6; lunge 1 -6 4 -4; lunge> -3 -2 4 -9;
lunges 2 -5 -2 0; lunges> 5 -4 -2 -4; lying -3 0 -5 3; ma 8 -5 -1 -2; mad -1 -2 -1 1; mad> 3 2 -3 -3;
madam 7 -6 -8 -4; made 4 -7 0 -2; make 2 0 -3 -2; makes -3 -3 -5 2; man 9 -6 -2 -5; man> 1 -1 0 0; manage
7 -4 -2 -2; managed 8 -6 -2 -5; many 7 -1 0 -6; march 2 0 -2 0; margaret 8 -10 -3 -5; mark 3 -4 -1 -2;
marking 0 2 0 -2; mat 3 -6 -4 -2; mat> 3 -4 -5 0; match 2 -2 0 -3; mate 10 -7 -6 -7; maths 8 -6 -3 -4;
max 5 -5 -5 -5; maybe -10 3 -5 3; me -3 2 -1 -7; me> 0 -5 -3 -1; mean 2 -3 -2 -1; meant 6 -6 -7 -6;
meeting 7 -4 -2 -6; meeting> 5 -1 -2 -2; meetings 7 -5 -1 -2; meetings> 4 -2 -1 -1; melon -8 -1 10 -4;
memory 7 -7 -3 -9; men 3 0 -1 -1; message 6 -5 -2 -3; messages 3 -2 -1 -2; messages> 4 -2 -1 -1; mid 4 -2
-4 -3; middle 0 4 -6 -2; midnight 7 -6 -1 -2; migraine 12 -7 -3 -9; migraine> 2 0 -1 0; miles 2 -1 0 -2;
milk 5 -4 -2 -3; min 1 -5 -2 -2; min> -5 1 -2 1; mind 5 -1 -4 -2; mine -2 -11 -5 6; mins 2 -3 -1 0; minus
4 -4 -1 -3; minute 5 -3 -5 0; minute> -4 -7 -6 8; minutes 2 -2 -1 2; minutes> -1 -3 -3 1; miss 6 -1 -5
-3; miss> 7 -2 -6 -4; missed 9 -2 -3 -5; missing -8 -5 -1 8; moment -5 -2 -9 5; monday 5 -2 -3 -6;
monday> 3 0 -3 -3; month -5 6 -1 -5; months -5 5 -1 -7; mood 8 -4 -3 -3; more -1 1 -2 -2; more> -3 2 -5
4; morgen 3 -1 -1 0; morning 0 -2 -2 0; morning> -2 2 -3 -2; most 8 -3 -3 -2; mostly 7 0 -1 -5; mother -4
-17 -12 7; motivation 7 -2 -4 -3; motivation> 5 -3 -2 -2; mouth -8 -9 -4 9; move 4 7 -10 -8; moved 3 -2 0
0; moves 8 -5 -3 -3; moving 8 -5 -3 -2; msg -2 -3 -1 2; much 3 -7 1 -6; much> -2 -1 4 -2; mum 5 -11 -14
-2; murder 6 0 -6 -1; murdered 2 -2 0 0; muscle 4 -10 0 -7; muscles 7 -7 0 -3; music -2 3 -1 -2; must -10
-3 -4 8; my -4 -1 1 2; myself -7 -13 -5 11; myself> -7 -1 -3 8; na 4 -3 0 -2; nada 8 -6 -3 -6; nah 4 -4
-4 -4; nah> 4 -4 -4 -4; nan 1 -1 0 0; nap 6 -2 0 -5; nasty 1 0 0 -1; near 5 -1 -2 -2; nearly -2 -3 -4 0;
neck 0 -1 -5 -3; neck> -8 -1 -1 -5; need -2 -9 -3 4; needed 6 -4 -2 -4; needle 2 -3 -2 -2; needles -9 9
-4 -6; neighbour -9 -9 -5 9; neighbours 4 -3 -1 -4; neither 2 0 -2 -8; netflix 3 -1 -1 -1; never 3 -6 -10
4; new 0 -7 -5 2; new> -1 -3 -2 2; news 6 -3 -6 -2; next -3 -11 -9 5; ngl 3 -3 -4 2; ngl> 3 0 0 -2; nice
3 -1 -4 -12; nice> 3 -3 -3 -2; niggle 10 -5 -5 -2; night -11 10 -7 -3; night> 4 -6 -1 -4; nights -9 12 -5
-8; nil 9 -3 -2 -3; nil> 9 -3 -3 -4; nine 3 -3 0 1; no 4 1 0 -5; no> 8 -6 -3 -6; nobody -3 -10 7 -4; none
7 -5 -2 -6; none> 7 -5 -2 -7; noon 7 -7 0 0; nope 6 -5 -2 -6; nope> 5 -1 -3 -1; nor 1 -5 -2 2; normal -1
1 -2 -9; nose 7 -2 -1 -4; not -1 -2 -2 1; not> 6 -6 -2 -8; note 4 -2 -2 -1; nothing 3 -2 -4 1; nothing>
-1 -6 -7 3; notice -7 -2 -4 1; noticed -3 -1 1 0; noticing -5 -5 -3 5; now -3 1 2 -3; now> 3 -1 -4 -5;
nowhere -16 -5 -5 15; numb -18 11 -9 4; numb> -10 4 -4 3; number 1 1 -3 -2; numbness -17 13 -10 -3; o 5
-4 0 0; obviously 5 -5 -4 -1; oclock 4 -6 -1 -1; oclock> 2 0 0 -1; odd -6 -7 -4 8; of 1 -1 -3 -2; off 2
-10 0 -4; off> 3 -4 -6 -3; office 5 -2 -1 -3; office> 5 -1 -1 -4; oh 5 -1 -1 -3; ok 0 -1 -4 -1; ok> 0 1
-3 -2; okay 3 -1 -2 -2; old 9 1 -2 -3; omg 8 -7 -2 -6; on -3 -4 3 -3; on> -2 1 -2 -5; once -3 -1 -1 3;
once> 7 -2 -1 -5; one -1 -6 -3 1; one> 6 1 -7 -10; ones 6 -6 -5 -7; ones> 3 -3 -2 -4; only 3 -2 -2 -2;
only> 4 -9 1 -6; open 3 -1 -2 -4; opened 8 -3 -4 -10; opener 9 -3 -2 -9; operation 4 -11 2 -7; or 15 -4
-6 -14; or> 2 -2 0 -2; osteoporosis 4 -5 0 -2; other -4 -9 6 -2; other> -2 -3 3 -1; others 4 -1 -2 0;
others> 3 -2 -2 -1; otherwise 8 -3 -1 -7; our 2 -1 0 -1; out -5 -4 1 5; out> 4 -9 -7 -2; outer -2 12 -3
-6; outside 4 0 -5 -5; over -4 -3 -7 2; over> -6 10 -11 -13; overnight -12 -3 12 -4; overslept 7 -5 -3
-4; overslept> 6 -5 -3 -3; overtime 8 -7 -1 -1; own 3 -3 -3 -1; packed 5 -5 0 -2; pain -3 3 -2 1; pain>
-2 -4 0 -1; painful -1 -7 2 -8; paining 2 -3 -11 -3; pains -13 8 -12 6; palpitations -15 -14 -8 17;
palpitations> -8 -6 -4 8; paper -7 -12 -10 8; parcel 1 0 0 0; parents 3 -2 -1 -3; park 4 -4 -5 -3; part 6
-1 -5 -2; part> 4 -1 -1 -2; party 7 -6 -1 -3; pass -5 -10 -7 8; passed -12 -5 -7 11; past 5 -3 0 -2;
pasta 4 -3 -1 -1; patch -6 -3 4 -9; pause 7 -3 -1 -3; pause> 8 -2 -3 -4; pee -11 -14 -8 19; pee> -6 -4 -4
7; people 6 -5 -2 0; percent 5 -4 -1 -1; period 5 -5 -2 -2; period> 4 -4 -2 -2; phone 4 -1 -9 -3; physio
3 -3 -1 -2; pigeon 8 -5 -3 -3; pillow -2 4 -2 -4; pinky -5 7 -3 -13; pins -7 7 -4 -5; pitch 3 2 -3 -2;
place -10 -2 -8 10; plan 9 -6 -1 -4; plane 3 0 -2 -1; plank 5 -3 -2 -4; plank> 4 -2 -6 -4; planks 4 -6 2
-4; planks> 3 -5 3 -6; planned 7 -1 -4 -2; platform 1 0 0 -1; playlist 3 -1 -1 -2; pleasant 4 -3 -1 -1;
please 7 -2 -2 -3; please> 5 -1 -4 -3; pleased 3 -3 -2 -6; plumber 8 -3 -1 -5; plus -11 11 -2 -2; pm 5 -3
-3 -2; pm> 5 -3 -6 -4; point 4 -3 -3 -3; poisoning 4 -2 0 -4; pop -15 -16 17 -8; pop> -4 -2 4 -6; popped
-20 -12 22 -6; popped> -3 -1 5 -1; pose 4 -2 -5 -5; pose> 7 -5 -1 -2; position -5 5 -1 -1; possible 0 -6
3 -3; postman 3 -2 -3 -3; potatoes 8 -5 -2 -5; power -4 10 -11 -10; practice 6 -9 6 -4; pregnant 8 -5 -6
-5; pregnant> 7 -5 -7 -6; press 5 -3 0 -4; pressed -2 -3 -2 4; pressing -1 -10 -9 10; pressure -12 -4 -4
9; pressure> -3 -3 1 3; pretty 5 -2 -3 -4; prickling -10 11 -8 -5; prob -2 -1 0 3; problem 1 -5 -4 0;
problem> 3 -5 -5 -1; programme 6 -4 -2 -5; programme> 5 -3 -2 -4; promise 9 -9 -6 -7; promise> 2 -1 -1
-1; proper -8 4 -3 -3; properly -8 2 -7 2; properly> -7 3 -7 -1; proud 3 -1 -2 0; puffed -4 -4 8 -2;
puffy -8 -6 7 -4; pull 16 -6 -2 -10; pulled 1 -10 0 -5; purple -7 -11 11 -5; push -12 3 -3 3; put 2 -13 5
-10; quads 7 -4 -3 -1; quarter 1 0 -1 0; quarters 3 -1 -3 0; quit 5 -6 -6 -3; quit> -3 -4 -5 4; quite 1
-2 -2 3; qx 2 -2 -3 -4; qx> -5 1 -2 -2; r 5 -4 -4 -1; racing -11 -4 -1 13; radiates -5 9 -8 0; radio 4 -4
-2 -2; rain 11 -10 -5 -8; rained 4 -1 -2 -2; raining 3 -2 -2 0; rainy 4 -1 0 -4; ramadan 4 -2 -1 -1; ran
5 -2 -1 -2; rang 3 0 -1 -2; rang> 3 -1 -2 -1; rd 1 -5 0 -1; reach 2 0 -1 0; reached 1 -3 2 -2; read 5 -3
0 -4; reading 4 -3 -4 -9; real 1 -3 0 -3; really -1 1 -5 -1; red -2 -2 3 0; regards 2 -1 0 0; rehearsal 6
-4 -1 0; reminder 4 -5 -2 -3; rep -3 -2 3 -1; report 8 -3 -6 -5; report> 6 0 -9 -5; reps 6 -5 -3 -1; rest
8 -12 -3 -1; rest> 2 -8 -4 1; results 3 -3 -4 -4; ride 4 -2 -2 -3; right 0 0 -3 -3; right> 3 -7 4 -9;
ring -7 5 3 -7; ringing -1 0 2 -1; road 5 -1 0 -3; roll -5 7 -10 -12; rolled -1 0 2 -4; roof 4 -1 0 -4;
room 0 1 -4 -5; round -1 -3 -1 1; round> 0 -9 -2 -1; rounds 3 -5 0 0; rounds> 5 -5 -5 -4; routine 3 -3 -2
0; row -1 0 0 -3; run 4 -2 -3 -2; run> 10 -5 -2 -4; running -3 4 -6 -6; runs -9 11 -8 -7; s 2 -2 0 -1;
sad 3 -11 -8 -3; saddle -5 -7 -2 7; said 5 -2 -1 -2; same 6 -3 -8 -3; same> 4 -3 -3 -4; sat -7 1 -3 4;
saturday 4 -2 -1 0; saw 4 -5 -8 -2; say 0 -1 -2 -2; says 4 -4 -6 0; scale 6 -4 -4 -3; scale> 7 0 -4 0;
school 2 -3 2 -4; school> 6 -4 -6 -5; scratch 5 -4 0 -1; screaming 5 -4 -4 0; seat -3 7 -4 0; seated -2 2
2 -5; sec -4 3 -1 -2; second -3 -2 -9 5; second> 4 -4 -4 2; seconds -4 -2 -2 4; seconds> -3 -5 -2 6; secs
-5 -3 -1 6; see -5 -9 -8 11; seeing -6 -10 -6 7; send 5 -2 -3 -4; sending 4 -2 -2 -1; sentence -10 -2 -4
10; sentence> -5 0 -2 5; session 3 -4 -1 -3; session> 4 -3 -8 -2; sessions 3 -2 -1 0; set 2 0 -7 -6; set>
-3 4 -5 -3; sets 8 -4 -2 -2; sets> 2 2 -3 -2; settle -6 7 -5 -2; settled 6 -6 -7 -4; seven 7 -2 -1 -3;
seven> 4 -2 0 -3; severe -21 -6 18 4; sewing 3 -12 -3 -2; shame -2 0 3 0; sharp 6 -8 8 -2; sharp> 5 -1 -3
-1; she 8 -5 -3 -3; shift 8 -4 -2 -5; shift> 8 -4 -6 -2; shin -9 -1 7 -10; shin> -4 -3 6 -1; shock -6 0 1
-6; shooting -19 9 0 -5; shoots -9 9 -8 -11; shopping -1 0 2 0; short -2 -5 -4 5; short> 8 -2 -5 -9;
shorter 8 -6 -3 -4; shorter> 5 -3 -3 -4; shortness -5 -3 -3 3; shot 3 -2 -3 -2; should -4 -1 4 -2;
shoulder -3 -2 4 -8; shoulder> 3 -7 -1 -3; shoulders 9 -7 -2 -2; show 5 -4 -4 -1; shower -3 -2 -3 4; shut
3 -2 -1 -1; si 6 -6 -5 -3; sick 15 -5 -3 -9; sick> 7 -2 -4 -2; side -4 -9 -3 5; side> -2 2 -2 -9; sides 8
-8 -6 -2; signed 7 -3 -5 -5; since -10 -1 -5 4; since> -2 -5 -4 1; single 5 -1 -3 -2; sir 1 -4 0 1; sir>
3 -1 -3 -2; sister 10 -4 -3 -8; sit -5 -2 -4 8; sit> 0 5 -1 -10; sitting -6 -10 -4 7; six 9 -8 -7 -6;
size -10 -5 13 -5; skip 10 -7 -5 -6; skipped 7 -6 -7 -4; skipped> 9 -4 -8 -9; skipping 0 -14 -5 4;
skipping> 6 -5 -6 -5; skips -5 -5 -3 5; slay 6 -6 -2 -8; sleep -9 11 -11 -8; sleeping 3 -1 -4 -4; slept 4
0 -2 -1; slight 6 2 -5 -4; slipped 0 -10 3 -9; slot 9 -9 -8 -9; slow 7 -6 -2 -2; slowly 5 -5 -6 -5;
slurred -13 -5 -7 15; slurred> -8 -4 -3 11; small 2 -4 0 -1; smug 6 -4 -1 -4; snap -9 -10 12 -6; snapped
-6 -10 9 -5; so 0 -2 -1 -5; so> -6 5 -6 -3; sofa 3 -7 -4 0; sole -3 10 -1 -12; sole> -1 6 -1 -6; solid 8
-7 -1 0; some -1 0 -2 -6; somebody -8 -7 -5 9; someone -7 2 8 2; something -6 -11 7 -3; somewhere 4 -3 0
-1; son 8 -5 -6 -7; sore 5 1 -6 -6; sore> 5 -9 1 -2; soreness 7 -6 -4 -5; sorry 3 -4 -2 -2; sorry> 3 0 -1
-1; sorted 5 -2 -3 -3; sound -8 -15 10 -1; soup -2 4 0 -1; space 6 -2 -4 -1; speak -3 -10 -4 6; speech -7
-8 -8 9; speech> -5 -2 -2 5; spinning -12 8 0 -4; split 3 -2 -1 -2; splits 6 -4 -2 -5; spot 3 0 -1 -1;
spreadsheets 5 -4 -8 -5; squat 1 1 -5 -2; squats 0 -1 -3 -4; squats> 2 -3 -1 2; squeezing -4 -3 -4 5;
stabbing 3 -13 6 2; stairs -9 -4 3 -1; stairs> -2 -3 0 -11; stand -2 -10 6 -5; standing -9 10 -5 -6;
staring 1 -1 0 0; start 6 -5 0 -2; started 0 -10 -4 3; starting 4 -2 -2 -3; static -6 7 -7 -3; station 4
0 -2 -3; stay -4 6 -2 -6; stayed 3 -2 0 -2; staying 7 -7 -1 -1; stays -5 4 -5 3; step -4 -12 8 1; steps 2
-3 -7 2; stiff 14 -13 -1 -1; stiff> 3 -1 -1 -3; stiffness 6 -5 -1 0; still -5 6 -7 0; still> 2 -9 -6 5;
stinking 7 -2 -3 -2; stomach 10 -4 -3 -11; stone -10 4 -1 -3; stood -3 2 -3 -1; stop 0 -1 -3 -6; stop> -1
7 1 -4; stopped -5 1 0 -3; stopped> -2 1 -1 -5; stopping 0 2 -5 -4; stops -2 -4 -9 4; straight 4 -2 -4
-6; strap 7 -2 -2 -4; streak 4 -1 -2 -1; street 2 -1 0 -1; strength -17 9 -9 -4; stress 8 -1 -2 -8;
stretch 1 0 -4 -3; stretch> 0 2 -6 -4; stretched 7 -10 -4 -3; stretches 0 -5 2 -2; stretches> 1 0 -5 -5;
stretching 3 -4 -1 -1; stretching> 4 -1 -4 -1; strong 4 -17 9 -4; stuck 6 -3 0 -3; stuff 7 -3 -1 -4; such
-3 -4 1 1; sudden -9 -19 -4 19; sudden> -2 -3 0 4; suddenly -3 -14 -10 8; suddenly> 0 -12 -4 7; sugar -2
-1 0 2; sun 4 -1 -2 -4; sunday 0 4 -3 -6; sunday> 1 0 -1 -5; sunrise 3 -3 -3 -2; super -1 1 -3 -4; sure 3
-1 -2 -2; swamped 12 -10 -1 -10; sweat -1 -3 -3 4; sweat> -3 -4 -1 3; sweating -7 -5 -3 6; sweating> -3
-5 -2 4; swell -4 -10 4 -4; swelled -10 -10 13 -7; swelling -16 -10 17 -8; swole -9 -9 9 -3; swollen -19
-8 22 -5; swollen> -5 -3 6 -2; table 2 -6 -6 1; tablets 4 -3 -12 -8; take 0 -7 4 -5; taking 0 -4 2 -9;
talk -2 -3 -3 2; tapped 4 0 -4 -3; tbh 5 -4 -2 -3; tbh> 2 -3 -2 -1; tea -2 0 -4 -2; teacher 5 -2 -2 -1;
teacher> 4 -1 -2 -2; team 12 -5 -3 -9; telephone 8 -7 -9 -12; tell -2 1 -6 0; telly -2 6 -5 -1; temp -11
11 -2 -3; temperature -2 2 -9 -5; ten 3 -2 -5 -3; ten> 0 2 -1 -6; tender 9 -9 -5 -4; tent 8 -8 -5 -5;
terrace 7 -3 -1 -4; terrible -1 -2 -2 2; texting 3 -3 -3 -2; th 5 -3 -2 -1; than -2 2 4 -5; thank 6 -15
-3 -4; thanks 6 -3 -2 -2; thanks> 5 -3 -4 -3; that -2 -3 -4 2; that> 4 -8 1 0; the -2 0 -1 0; the> 6 -6
-6 -3; them 9 -2 -1 -7; them> 5 -2 -1 -3; then 0 -6 1 1; then> 3 -4 -2 -13; there -2 0 -2 -1; there> -3 2
-3 2; these 0 0 -1 -6; these> 3 -4 -4 -3; they -2 2 -2 -4; thick -12 -5 8 -5; thigh -9 -5 3 -8; thigh> -1
4 0 -13; thighs -5 0 -3 4; thing 2 1 -8 -3; thing> 6 -3 -1 -6; think -10 -6 5 4; think> -2 -4 3 -3; third
3 -5 -5 0; thirds 8 -4 -2 -3; this -2 -5 1 1; this> 4 -1 -2 -3; those 4 -5 -4 -5; though -2 -2 5 -4;
though> 4 -2 -1 -2; thought -1 -5 -2 2; thread 1 -1 3 0; three 6 2 -3 -8; three> 10 -5 -4 -2; threw 8 -5
-4 -1; throat 2 -1 -1 0; throbbing -16 -6 16 -8; throbbing> -5 -2 6 0; throbs -11 -7 11 -9; through 4 -3
-2 -3; throwing 6 -6 -9 -7; thumb -7 8 -3 -8; thursday 2 0 -2 0; thursday> 2 0 -2 0; tight 4 -8 -2 3;
tight> 2 -3 -3 0; tightness 3 -2 -1 0; till 2 -2 -4 -4; time 5 1 -5 -5; time> 2 1 -6 -2; times -6 3 2 -1;
timing 2 -1 0 0; tingle -9 10 -6 -3; tingles -16 11 -8 -6; tingles> -8 6 -6 -4; tingling -21 19 -8 -4;
tingling> -6 6 -2 -6; tingly -11 12 -7 -6; tired -1 -3 -10 2; tired> 1 1 -3 -9; to 1 -2 -2 -2; toast 4 -3
-3 -4; today 3 -6 1 -3; today> 4 -2 -6 -8; todays -1 -6 -4 1; toddler 4 -3 -6 -5; toe 4 3 -6 -9; toe> -8
8 -1 -5; toes -11 16 -5 -11; toes> -2 4 -3 -8; together 1 3 -2 -3; toilet -3 -11 -7 3; told 13 -12 -2 -3;
tomorrow 5 -3 -2 -1; tomorrow> 4 -2 -3 0; tongue -1 -16 -8 6; tonight 7 -15 -2 -5; tonight> 4 0 -2 -2;
tonite 8 -6 -4 -1; too 2 -5 -5 3; took 3 -1 1 -1; totally 5 -1 -2 -1; touch 7 -13 3 -3; touch> -9 -1 8 0;
touched 3 -1 0 -2; touching 8 -8 -4 -4; tough 9 -5 -1 -4; tough> 7 -1 -1 -5; tow -6 6 -6 -10; traffic 5 0
-5 0; train 5 -3 -5 -1; training 6 -5 -7 -3; travelling 13 -5 -4 -7; travelling> 3 -1 -1 -1; tree 0 6 -3
-4; tried 3 -5 -7 2; trouble -7 -8 -5 8; trousers 1 2 -7 -4; truck 1 -3 -1 2; try 12 -13 0 -1; trying -9
12 -3 -7; tuesday -3 3 -3 0; tuesday> -4 1 -4 3; tummy 12 -6 -5 -8; turn -2 -7 5 0; turned 0 -5 1 -3;
twang -3 -4 5 -5; twice -5 -1 5 -1; twice> 8 -6 -7 -6; twig -8 0 9 -1; twins 6 -5 -1 -5; twist -5 0 -1 2;
two 2 1 -5 -2; two> 13 -9 -1 -8; type -2 1 -5 0; typing -3 -2 0 3; typo 1 0 0 0; tyre 4 -4 -1 -1; um 3 -1
-2 -2; unannounced 3 0 -2 0; unbearable -16 -8 14 -11; under -7 -4 10 -9; understand -1 -1 0 2; unreal 9
-6 -10 -6; unsubscribe 5 -4 -5 -4; until 2 6 -4 -3; up -6 -1 3 -3; up> 3 -1 -4 -6; update 4 0 -2 -1;
upper 4 -1 -1 -1; upset 4 -3 -2 -5; urine -5 -6 0 8; us 3 -1 -2 0; used 2 -6 0 3; version 5 -2 -2 -4;
version> 6 -3 -3 -6; very 3 -3 -3 0; video 4 -4 -4 -4; view 8 -7 -1 -3; village 4 -1 -1 -3; vision -6 -7
-5 7; vision> -7 -1 -3 7; visit 5 -5 -1 -5; visit> 7 -3 -1 -7; visiting 8 -1 -1 -9; visitors 12 -4 -4 -5;
visitors> 2 0 -1 -1; voice 5 -3 -2 -9; waist 8 -4 -2 -4; wait 4 -3 -1 -1; waiting 7 -4 -2 -2; wake -8 6
-4 3; wakes -15 18 -8 -10; waking -7 8 -4 -1; walk -12 2 8 -6; walk> -9 3 4 -12; walked 2 -1 -1 -2;
walking -7 6 4 0; wall -2 6 -6 -5; want 4 -5 -2 -2; wanted 2 1 0 -10; warm -3 -14 12 -4; warm> -2 0 2 0;
was 4 -3 -2 -4; washing 7 -5 -1 -7; watched 5 -4 -2 -2; watching 5 -4 0 -2; water -2 -2 -2 0; way -12 -7
10 -5; way> -1 -13 1 -2; we 11 -4 -1 -9; weak -25 12 -10 -4; weak> -14 -2 -9 4; weakness -23 11 -12 0;
weakness> -15 3 -9 0; weather 7 -4 -10 -8; wedding 8 -3 -1 -8; wee -14 -5 -7 7; week 1 3 -3 -10; week> 7
-2 -3 -1; weekend -3 -4 -3 3; weekend> 2 -1 2 -5; weeks 2 2 -3 -4; weeks> 3 -2 -1 -1; weight -10 -3 12
-9; weight> -6 -5 5 -3; weird -7 5 -9 -4; well -3 4 -5 -6; well> 4 -5 -2 -2; went -6 0 -2 6; were 1 0 -2
-4; wet -7 -5 -3 8; what -3 3 -1 -10; whatever -12 9 -4 -3; whatsoever 6 -4 -1 -2; whatsoever> 5 -2 0 -2;
when -6 2 -5 1; whenever -5 3 -3 -2; where 0 -7 -1 4; which 4 -1 -2 -2; while -3 5 -4 -3; who -2 0 2 -1;
whole -7 5 -4 2; why -4 6 -4 -2; wife -4 -8 -9 7; wifi 5 -5 -1 -2; will -4 2 0 -9; window -3 -5 -4 5;
wipe -6 -11 -2 9; wire -4 4 -4 -3; wise 6 -4 -2 -1; with -2 2 -3 -5; without -3 2 -9 -1; without> 8 -4 -2
-4; wk 4 -4 -3 0; woke -6 5 -5 3; woken -9 9 -4 -5; won 3 0 0 -2; wool -8 3 -5 1; woozy -17 9 -7 -7;
words -13 -3 -1 15; words> 0 -1 -1 3; work 7 -4 -2 -4; work> 5 -2 -1 -4; working 10 -7 0 -7; works 6 -6 0
-1; worse 4 1 -5 -7; worse> 6 -6 -3 -4; worst -4 -13 6 -11; would 4 -3 -6 -3; wrist 2 -5 2 -8; wrist> 2 0
1 -1; wrists 3 -1 0 -1; write -1 -1 -5 2; writing -1 -2 2 -2; wrong -5 -1 0 6; wrote 5 -2 0 -4; x 6 -2 -2
-3; xx 7 -3 -4 -6; yeah 6 -5 -4 -3; year -3 1 -8 0; years 4 -9 -2 -8; yep 2 -5 -4 -2; yep> 7 -5 -6 -8;
yes 6 -7 -3 -2; yes> 10 -9 -4 -3; yesterday -4 -3 0 -3; yesterday> -1 2 -4 -6; yet 12 -4 -7 -3; yet> 5 -1
-1 -2; yoga 11 -11 -1 -2; you 6 -5 -4 -4; you> 3 -1 -1 -1; your 7 -1 -3 -5; yup 8 -3 -2 -7; yup> 4 -2 -3
-1; zap -5 5 -4 -5; zero 10 -5 -3 -7; zero> 7 -4 -5 -7; zilch 6 -5 -5 -5; zoom 3 -1 -1 0; ✅ 1 -4 -3 0; ✅>
5 -4 -4 -5; ✌ -5 6 -9 -6; ✔ 6 -4 -3 -3; ✔> 4 -1 -1 -2; ❌ 6 -4 -4 -4; ❌> 6 -4 -4 -4; 🎉 5 -1 -2 -2; 🎉> 5 -2
-2 -2; 🏽 3 -2 -2 -2; 🏽> 3 -2 -2 -2; 👌 5 -4 -4 -5; 👌> 5 -4 -4 -5; 👍 8 -4 -3 -3; 👍> 6 -5 -2 -3; 👎 6 -4 -3
-4; 👎> 6 -4 -4 -4; 💀 0 -2 -1 1; 💀> 0 -3 -2 2; 💪 6 -4 -3 -4; 💪> 4 -3 -3 -3; 🔥 7 -5 -9 -8; 😂 6 -5 -4 -4; 😂>
5 -1 -1 -6; 😊 4 -2 -1 -2; 😎 4 -4 -4 -4; 😎> 4 -4 -4 -4; 😩 3 -3 -3 -2; 😭 0 -3 -1 1; 😴 4 -3 -4 -4; 🙌 5 -5 -2
-3; 🙌> 6 -5 -3 -3; 🤒 5 -2 -2 -2
"""
"""Each entry: a word of at least three replies ("<" first, ">" last, "#" a number, "_" every reply), and its weights in
the order of `suspicion.LEVELS`; 5 is one natural logarithm of the odds."""
